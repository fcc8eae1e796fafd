using CsCheck;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

public sealed class GwetAgreementTests
{
    // Source: [Gwet2019] gwet.ac1.table() of irrCAC: eleven digits. Its ranges use Student's law and stop at 1; ours are normal ones.
    [Fact]
    public void Of_TablesOfR_AgreesInCoefficientAndError()
    {
        foreach (var row in GoldenTable.Rows("Agreement/tables.csv"))
        {
            var table = AgreementData.Known(row["table"]);
            var agreement = GwetAgreement.Of(table, AgreementData.Weights(row["weights"], table.CategoryCount), 0.95);
            Assert.Equal(row.Number("irrCAC_AC")!.Value, agreement.ValueFraction!.Value, 1e-9);
            Assert.Equal(row.Number("AC_pe")!.Value, agreement.ChanceFraction!.Value, 1e-9);
            Assert.Equal(row.Number("irrCAC_AC_se")!.Value, agreement.ErrorFraction!.Value, 1e-9);
        }
    }

    [Fact]
    public void Of_Paradox_StaysHigh()
    {
        // By hand: 118/125 agree; the second category has share 7/250, so chance is 2 · 7/250 · 243/250.
        var chance = 2 * 7 / 250.0 * 243 / 250;
        Assert.Equal((118 / 125.0 - chance) / (1 - chance), Plain(AgreementData.Paradox).ValueFraction!.Value, 1e-12);
        Assert.Equal(1, Plain(AgreementTable.Of(new[,] { { 25, 0 }, { 0, 0 } })).ValueFraction);
        Assert.Equal(0, Plain(AgreementTable.Of(new[,] { { 25, 0 }, { 0, 0 } })).ErrorFraction);
        Assert.Null(Plain(AgreementTable.Of(new int[2, 2])).ValueFraction);
    }

    [Fact]
    public void Of_ManyJudgesOfFleiss_AgreesWithR()
    {
        // Source: [Gwet2019] gwet.ac1.dist() of irrCAC on the data of [Fleiss1971].
        var agreement = GwetAgreement.Of(FleissKappaTests.Diagnoses, 0.95);
        Assert.Equal(.447884516, agreement.ValueFraction!.Value, 1e-9);
        Assert.Equal(.0556621417, agreement.ErrorFraction!.Value, 1e-9);
        Assert.Equal(30, agreement.PairCount);
    }

    [Fact]
    public void Of_TwoJudgesEitherWay_IsTheSame() => AgreementData.Any.Sample(table =>
    {
        var things = AgreementData.Pairs(table).Select(p => (IReadOnlyList<int>)Enumerable.Range(0, table.CategoryCount)
            .Select(c => (p.First == c ? 1 : 0) + (p.Second == c ? 1 : 0)).ToArray()).ToList();
        var (byTable, byCounts) = (Plain(table), GwetAgreement.Of(RatingCounts.Of(things, table.CategoryCount), 0.9));
        Assert.Equal(byTable.ValueFraction is null, byCounts.ValueFraction is null);
        if (byTable.ValueFraction is null || things.Count < 2) return;
        Assert.Equal(byTable.ValueFraction.Value, byCounts.ValueFraction!.Value, 1e-12);
        // The two published errors differ by n against n − 1, and by nothing else.
        Assert.Equal(byTable.ErrorFraction!.Value * Math.Sqrt(things.Count / (things.Count - 1.0)), byCounts.ErrorFraction!.Value, 1e-9);
    });

    [Fact]
    public void Of_AnyTable_IsAboveHalfTheWayWhereHalfAgree() => AgreementData.Any.Sample(table =>
    {
        // A law: chance never agrees more often than in 1 of the categories, so AC1 is at least what even answers would give.
        if (Plain(table) is not { ValueFraction: { } value } agreement) return;
        var even = 1.0 / table.CategoryCount;
        Assert.InRange(agreement.ChanceFraction!.Value, 0, even + 1e-12);
        Assert.True(value >= (agreement.AgreementFraction!.Value - even) / (1 - even) - 1e-12);
        Assert.Equal(value, Plain(AgreementData.Turned(table)).ValueFraction!.Value, 1e-12);
    });

    [Fact]
    public void Of_ThingsJudgedOnceOrNever_CountForTheSharesOnly()
    {
        // By hand: one thing judged by both as 0, one by one judge as 1, one by nobody. Shares 1/2 and 1/2, chance 1/2, agreed 1.
        var agreement = GwetAgreement.Of(RatingCounts.Of([[2, 0], [0, 1], [0, 0]], 2), 0.9);
        Assert.Equal((1, 1.0, 0.5, 1.0), (agreement.PairCount, agreement.AgreementFraction!.Value, agreement.ChanceFraction!.Value, agreement.ValueFraction!.Value));
        Assert.Null(GwetAgreement.Of(RatingCounts.Of([[2, 0]], 2), 0.9).ErrorFraction);
        Assert.Equal(AgreementCautions.NoPairs, GwetAgreement.Of(RatingCounts.Of([[1, 0]], 2), 0.9).Cautions);
    }

    [Fact]
    public void Counts_OutsideTheirRange_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RatingCounts.Of([], 1));
        Assert.Throws<ArgumentException>(() => RatingCounts.Of([[1, 2, 3]], 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => RatingCounts.Of([[1, -2]], 2));
        Assert.Throws<ArgumentException>(() => GwetAgreement.Of(AgreementData.Paradox, AgreementWeights.Identity(3), 0.9));
    }

    private static AgreementFigure Plain(AgreementTable table) => GwetAgreement.Of(table, AgreementWeights.Identity(table.CategoryCount), 0.9);
}
