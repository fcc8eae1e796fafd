using CsCheck;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

public sealed class CohenKappaTests
{
    // Sources: [Meyer2023] Kappa() of R's vcd for kappa and its error; [Gwet2019] irrCAC agrees in both. The file names the commands.
    // psych's range of a weighted kappa is wrong (of no width on the abstractors) and is not used.
    [Fact]
    public void Of_TablesOfR_AgreesInKappaErrorAndRange()
    {
        foreach (var row in GoldenTable.Rows("Agreement/tables.csv"))
        {
            var table = AgreementData.Known(row["table"]);
            var kappa = CohenKappa.Of(table, AgreementData.Weights(row["weights"], table.CategoryCount), 0.95);
            Assert.Equal(row.Count("n"), kappa.PairCount);
            Assert.Equal(row.Number("po")!.Value, kappa.AgreementFraction!.Value, 1e-9);
            Assert.Equal(row.Number("pe")!.Value, kappa.ChanceFraction!.Value, 1e-9);
            Assert.Equal(row.Number("vcd_kappa") is null, kappa.ValueFraction is null);
            if (kappa.ValueFraction is null) continue;
            Assert.Equal(row.Number("vcd_kappa")!.Value, kappa.ValueFraction.Value, 1e-9);
            Assert.Equal(row.Number("vcd_ase")!.Value, kappa.ErrorFraction!.Value, 1e-10);
            Assert.Equal(row.Number("lo95")!.Value, kappa.LowFraction!.Value, 1e-9);
            Assert.Equal(row.Number("hi95")!.Value, kappa.HighFraction!.Value, 1e-9);
        }
    }

    [Fact]
    public void Of_CohensOwnWeights_GivesHisWeightedKappa()
    {
        // Source: [Cohen1968] as quoted in the help of R's psych: .492, and .348 with his disagreements; their error by the formula
        // of [FleissCohenEveritt1969], which a second program agrees with in nine digits.
        var plain = CohenKappa.Of(AgreementData.Cohen1968, AgreementWeights.Identity(3), 0.95);
        Assert.Equal(.491525424, plain.ValueFraction!.Value, 1e-9);
        var weighted = CohenKappa.Of(AgreementData.Cohen1968, AgreementWeights.OfDisagreements(new double[,] { { 0, 1, 3 }, { 1, 0, 6 }, { 3, 6, 0 } }), 0.95);
        Assert.Equal(.347826087, weighted.ValueFraction!.Value, 1e-9);
        Assert.Equal(.075504015, weighted.ErrorFraction!.Value, 1e-8);
    }

    [Fact]
    public void Of_FourGradesByHand_GivesAllThreeKappas()
    {
        // By hand: 20 of 28 agree; margins 4 9 10 5 and 4 9 10 5. Plain: chance 222/784.
        var table = AgreementTable.Of(new[,] { { 3, 1, 0, 0 }, { 1, 6, 2, 0 }, { 0, 2, 7, 1 }, { 0, 0, 1, 4 } });
        Assert.Equal((20 / 28.0 - 222 / 784.0) / (1 - 222 / 784.0), CohenKappa.Of(table, AgreementWeights.Identity(4), 0.9).ValueFraction!.Value, 1e-12);
        Assert.Equal(.7241, CohenKappa.Of(table, AgreementWeights.Linear(4), 0.9).ValueFraction!.Value, 0.5e-4);
        Assert.Equal(.8391, CohenKappa.Of(table, AgreementWeights.Quadratic(4), 0.9).ValueFraction!.Value, 0.5e-4);
    }

    [Fact]
    public void Of_SameAgreementOtherMargins_FallsWhereOneAnswerIsCommon()
    {
        // Source: [FeinsteinCicchetti1990], from memory: .70 and .32 at the same 85 in 100; and the paradox of 118 of 125.
        Assert.Equal(.70, Plain(AgreementData.Known("feinstein_balanced")).ValueFraction!.Value, 5e-3);
        Assert.Equal(.32, Plain(AgreementData.Known("feinstein_skewed")).ValueFraction!.Value, 5e-3);
        var paradox = Plain(AgreementData.Paradox);
        Assert.Equal(-.023391813, paradox.ValueFraction!.Value, 1e-9);
        Assert.Equal(AgreementCautions.MostlyOneCategory, paradox.Cautions);
    }

    [Fact]
    public void Of_OneAnswerThroughout_IsNotDefined()
    {
        var kappa = Plain(AgreementTable.Of(new[,] { { 25, 0 }, { 0, 0 } }));
        Assert.Null(kappa.ValueFraction);
        Assert.Null(kappa.ErrorFraction);
        Assert.Null(kappa.LowFraction);
        Assert.Equal(1, kappa.AgreementFraction);
        Assert.Equal(AgreementCautions.OneCategory | AgreementCautions.MostlyOneCategory, kappa.Cautions);
        Assert.Equal(AgreementCautions.NoPairs, Plain(AgreementTable.Of(new int[2, 2])).Cautions);
        Assert.Equal(AgreementCautions.FewPairs, Plain(AgreementTable.Of(new[,] { { 3, 1 }, { 1, 2 } })).Cautions);
        Assert.Equal(AgreementCautions.FewPairs, Plain(AgreementTable.Of(new[,] { { 5, 1 }, { 1, 2 } })).Cautions);
        Assert.Equal(AgreementCautions.None, Plain(AgreementTable.Of(new[,] { { 6, 1 }, { 1, 2 } })).Cautions);
        // By hand: 85 and 86 of 100 answers are the first.
        Assert.Equal(AgreementCautions.None, Plain(AgreementTable.Of(new[,] { { 85, 0 }, { 0, 15 } })).Cautions);
        Assert.Equal(AgreementCautions.MostlyOneCategory, Plain(AgreementTable.Of(new[,] { { 86, 0 }, { 0, 14 } })).Cautions);
    }

    [Fact]
    public void Of_AnyTable_AgreesWithPairsOfPairs() => Gen.Select(AgreementData.Any, Gen.Int[0, 2]).Sample((table, which) =>
    {
        var weights = AgreementData.Weights(new[] { "identity", "linear", "quadratic" }[which], table.CategoryCount);
        var kappa = CohenKappa.Of(table, weights, 0.9);
        // The plain second version: chance is the mean weight of every first judgement with every second one.
        var pairs = AgreementData.Pairs(table).ToList();
        if (pairs.Count == 0) return;
        var agreed = pairs.Average(p => weights[p.First, p.Second]);
        var chance = pairs.Average(p => pairs.Average(q => weights[p.First, q.Second]));
        Assert.Equal(agreed, kappa.AgreementFraction!.Value, 1e-12);
        Assert.Equal(chance, kappa.ChanceFraction!.Value, 1e-12);
        Assert.Equal(1 - chance < 1e-12, kappa.ValueFraction is null);
        if (kappa.ValueFraction is not { } value) return;
        Assert.Equal((agreed - chance) / (1 - chance), value, 1e-9);
        Assert.InRange(value, kappa.LowFraction!.Value - 1e-12, kappa.HighFraction!.Value + 1e-12);

        // The error, a second time, by moving each cell's share a little: the delta method without its algebra.
        double Kappa(Func<int, int, double> share)
        {
            var k = table.CategoryCount;
            double po = 0, pe = 0;
            for (var i = 0; i < k; i++)
                for (var j = 0; j < k; j++)
                {
                    po += weights[i, j] * share(i, j);
                    pe += weights[i, j] * Enumerable.Range(0, k).Sum(c => share(i, c)) * Enumerable.Range(0, k).Sum(c => share(c, j));
                }
            return (po - pe) / (1 - pe);
        }
        double sum = 0, mean = 0;
        for (var a = 0; a < table.CategoryCount; a++)
            for (var b = 0; b < table.CategoryCount; b++)
            {
                const double h = 1e-6;
                double Moved(double by) => Kappa((i, j) => (double)table[i, j] / pairs.Count + (i == a && j == b ? by : 0));
                var slope = (Moved(h) - Moved(-h)) / (2 * h);
                sum += table[a, b] * slope * slope / pairs.Count;
                mean += table[a, b] * slope / pairs.Count;
            }
        // Shares sum to 1, so what all cells' slopes have in common moves nothing and is taken away.
        Assert.Equal(Math.Sqrt(Math.Max(0, sum - mean * mean) / pairs.Count), kappa.ErrorFraction!.Value, 1e-5 * Math.Max(1, 1 / (1 - chance)));
    });

    [Fact]
    public void Of_JudgesSwapped_StaysTheSame() => AgreementData.Any.Sample(table =>
    {
        var weights = AgreementWeights.Linear(table.CategoryCount);
        var (one, other) = (CohenKappa.Of(table, weights, 0.9), CohenKappa.Of(AgreementData.Turned(table), weights, 0.9));
        Assert.Equal(one.ValueFraction is null, other.ValueFraction is null);
        if (one.ValueFraction is null) return;
        Assert.Equal(one.ValueFraction.Value, other.ValueFraction!.Value, 1e-12);
        Assert.Equal(one.ErrorFraction!.Value, other.ErrorFraction!.Value, 1e-9);
    });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentException>(() => CohenKappa.Of(AgreementData.Paradox, AgreementWeights.Identity(3), 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => CohenKappa.Of(AgreementData.Paradox, AgreementWeights.Identity(2), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementWeights.Identity(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementWeights.OfDisagreements(new double[,] { { 0, 1 }, { -1, 0 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementWeights.OfDisagreements(new double[,] { { 1, 1 }, { 1, 0 } }));
        Assert.Throws<ArgumentException>(() => AgreementWeights.OfDisagreements(new double[2, 2]));
        Assert.Throws<ArgumentException>(() => AgreementWeights.OfDisagreements(new double[2, 3]));
        Assert.Throws<ArgumentException>(() => AgreementTable.Of(new int[2, 3]));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.Of(new[,] { { 1, -1 }, { 0, 0 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgreementTable.Of(2, [new(0, 2)]));
        Assert.Throws<ArgumentException>(() => AgreementTable.Sum([]));
        Assert.Throws<ArgumentException>(() => AgreementTable.Sum([AgreementData.Paradox, AgreementData.Abstractors]));
    }

    private static AgreementFigure Plain(AgreementTable table) => CohenKappa.Of(table, AgreementWeights.Identity(table.CategoryCount), 0.95);
}
