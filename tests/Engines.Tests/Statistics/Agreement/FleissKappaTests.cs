using CsCheck;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

public sealed class FleissKappaTests
{
    // Source: [Fleiss1971] table 1: 30 patients, 6 raters, 5 diagnoses.
    internal static RatingCounts Diagnoses { get; } = RatingCounts.Of(
        GoldenTable.Rows("Agreement/fleiss1971.csv").Select(r => (IReadOnlyList<int>)new[] { "Depression", "PersonalityDisorder", "Schizophrenia", "Neurosis", "Other" }
            .Select(r.Count).ToArray()).ToList(), 5);

    [Fact]
    public void Of_DiagnosesOfFleiss_GivesHisKappa()
    {
        // Sources: [Fleiss1971] .430, from memory; [Gamer2019] kappam.fleiss() of R's irr 0.84.1 for the digits and z.
        var kappa = FleissKappa.Of(Diagnoses);
        Assert.Equal(.430244520, kappa.KappaFraction!.Value, 1e-9);
        Assert.Equal(.555555556, kappa.AgreementFraction!.Value, 1e-9);
        Assert.Equal(.219938272, kappa.ChanceFraction!.Value, 1e-9);
        Assert.Equal(17.6518306, kappa.DistanceSd!.Value, 1e-6);
        Assert.Equal((30, 6), (kappa.ThingCount, kappa.RaterCount));
    }

    // Source: [Gwet2019] scott2.table() of irrCAC: with two judges it is Scott's pi.
    [Fact]
    public void Of_TwoJudgesOfR_IsScottsPi()
    {
        foreach (var row in GoldenTable.Rows("Agreement/tables.csv").Where(r => r["weights"] == "identity"))
        {
            var pi = FleissKappa.Of(Counts(AgreementData.Known(row["table"]))).KappaFraction;
            if (row.Number("scott_pi") is { } expected) Assert.Equal(expected, pi!.Value, 1e-9);
            else Assert.Null(pi);
        }
    }

    [Fact]
    public void Of_AnyThings_AgreesWithPairsOfJudges() => Gen.Int[2, 4].SelectMany(k => Gen.Int[2, 5].SelectMany(m => Gen.Int[0, k - 1].Array[m].Array[1, 15]
        .Select(ratings => (k, ratings)))).Sample(x =>
    {
        var (k, ratings) = x;
        var kappa = FleissKappa.Of(RatingCounts.Of(ratings.Select(t => (IReadOnlyList<int>)Enumerable.Range(0, k).Select(c => t.Count(r => r == c)).ToArray()).ToList(), k));
        // The plain second version: all ordered pairs of two judges of one thing, and of any two judgements at all.
        var agreed = ratings.Average(t => t.SelectMany((a, i) => t.Where((_, j) => j != i).Select(b => a == b ? 1.0 : 0)).Average());
        var all = ratings.SelectMany(t => t).ToList();
        var chance = all.Average(a => all.Average(b => a == b ? 1.0 : 0));
        Assert.Equal(agreed, kappa.AgreementFraction!.Value, 1e-12);
        Assert.Equal(chance, kappa.ChanceFraction!.Value, 1e-12);
        if (all.Distinct().Count() == 1)
        {
            Assert.Null(kappa.KappaFraction);
            Assert.Null(kappa.DistanceSd);
            Assert.True(kappa.Cautions.HasFlag(AgreementCautions.OneCategory));
            return;
        }
        Assert.Equal((agreed - chance) / (1 - chance), kappa.KappaFraction!.Value, 1e-9);
        Assert.InRange(kappa.KappaFraction.Value, -1, 1);
    });

    [Fact]
    public void Of_UnequalOrSingleJudges_Throws()
    {
        Assert.Throws<ArgumentException>(() => FleissKappa.Of(RatingCounts.Of([[2, 0], [1, 2]], 2)));
        Assert.Throws<ArgumentException>(() => FleissKappa.Of(RatingCounts.Of([[1, 0]], 2)));
        Assert.Equal(AgreementCautions.NoPairs, FleissKappa.Of(RatingCounts.Of([], 2)).Cautions);
    }

    private static RatingCounts Counts(AgreementTable table) => RatingCounts.Of(AgreementData.Pairs(table).Select(p =>
        (IReadOnlyList<int>)Enumerable.Range(0, table.CategoryCount).Select(c => (p.First == c ? 1 : 0) + (p.Second == c ? 1 : 0)).ToArray()).ToList(), table.CategoryCount);
}
