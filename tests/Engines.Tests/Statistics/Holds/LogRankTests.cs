using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Engines.Tests.Statistics.Holds;

public sealed class LogRankTests
{
    // Source: [Therneau2023] survdiff of R's survival 3.5.3, twelve digits; 16.79 for the first also stands in textbooks.
    [Fact]
    public void Of_DataOfR_AgreesInDistanceAndChance()
    {
        var remission = LogRank.Of([HoldData.Treated, HoldData.Controls]);
        Assert.Equal(16.792940989217, remission.ChiSquareSd2!.Value, 1e-9);
        Assert.Equal(4.168809109e-05, remission.ChanceFraction!.Value, 1e-13);
        Assert.Equal(1, remission.DegreesCount);
        Assert.Equal(9, remission.Groups[0].FallenCount);
        Assert.True(remission.Groups[0].ExpectedCount > 9, "The treated held longer.");

        var leukaemia = LogRank.Of([HoldData.Maintained, HoldData.NotMaintained]);
        Assert.Equal(3.396388698978, leukaemia.ChiSquareSd2!.Value, 1e-9);
        Assert.Equal(6.533932204e-02, leukaemia.ChanceFraction!.Value, 1e-11);
    }

    [Fact]
    public void Of_TwoHoldsByHand_IsOne()
    {
        // By hand: at 1 s one falls of two, expected 1/2 each, variance 1/4; at 2 s one of one, nothing left to chance. (1/2)²/(1/4) = 1.
        var test = LogRank.Of([[new(1, true)], [new(2, true)]]);
        Assert.Equal(1, test.ChiSquareSd2!.Value, 1e-12);
        Assert.Equal([0.5, 1.5], test.Groups.Select(g => g.ExpectedCount));
    }

    [Fact]
    public void Of_ThreeGroups_AgreesWithTheMatrixForm() => Gen.Select(HoldData.Any, HoldData.Any, HoldData.Any).Sample((a, b, c) =>
    {
        HoldTime[][] groups = [a, b, c];
        var test = LogRank.Of(groups);
        // The plain second version: at each fall a draw without replacement; all three groups, and a generalised inverse.
        var (difference, variance) = (Vector<double>.Build.Dense(3), Matrix<double>.Build.Dense(3, 3));
        foreach (var time in groups.SelectMany(g => g).Where(h => h.HasFallen).Select(h => h.HeldS).Distinct())
        {
            var risk = Vector<double>.Build.DenseOfEnumerable(groups.Select(g => (double)g.Count(h => h.HeldS >= time)));
            var fell = Vector<double>.Build.DenseOfEnumerable(groups.Select(g => (double)g.Count(h => h.HeldS == time && h.HasFallen)));
            var (n, d) = (risk.Sum(), fell.Sum());
            difference += fell - d * risk / n;
            if (n > 1)
                variance += d * (n - d) / (n - 1) * (Matrix<double>.Build.DiagonalOfDiagonalVector(risk) / n - risk.OuterProduct(risk) / (n * n));
        }
        var parts = variance.Svd();
        var rank = parts.S.Count(s => s > 1e-9);
        Assert.Equal(rank, test.DegreesCount);
        if (rank == 0)
        {
            Assert.Null(test.ChiSquareSd2);
            return;
        }
        var chi = Enumerable.Range(0, rank).Sum(i => Math.Pow(parts.U.Column(i) * difference, 2) / parts.S[i]);
        Assert.Equal(chi, test.ChiSquareSd2!.Value, 1e-6 * Math.Max(1, chi));
        Assert.Equal(0, difference.Sum(), 1e-9);
    });

    [Fact]
    public void Of_GroupsInAnyOrderAndUnit_StaysTheSame() => Gen.Select(HoldData.Any, HoldData.Any, HoldData.Any).Sample((a, b, c) =>
    {
        var (one, other) = (LogRank.Of([a, b, c]), LogRank.Of([c, a.Select(h => h with { HeldS = h.HeldS * 60 }).ToArray(), b]));
        if (one.ChiSquareSd2 is null) return;
        var minutes = LogRank.Of(new[] { c, a, b }.Select(g => g.Select(h => h with { HeldS = h.HeldS * 60 }).ToArray()).ToArray());
        Assert.Equal(one.ChiSquareSd2.Value, minutes.ChiSquareSd2!.Value, 1e-7 * Math.Max(1, one.ChiSquareSd2.Value));
        Assert.Equal(one.Groups.Sum(g => g.FallenCount), one.Groups.Sum(g => g.ExpectedCount), 1e-9);
        Assert.Equal(other.Groups.Sum(g => g.FallenCount), other.Groups.Sum(g => g.ExpectedCount), 1e-9);
    });

    [Fact]
    public void Of_NothingToCompare_IsNoneWithCautions()
    {
        var held = LogRank.Of([[new(5, false, 1)], [new(5, false, 1)]]);
        Assert.Null(held.ChiSquareSd2);
        Assert.Null(held.ChanceFraction);
        Assert.Equal(HoldCautions.FewHolds | HoldCautions.NobodyFell | HoldCautions.RepeatedPupils, held.Cautions);
        Assert.Equal(HoldCautions.NoHolds, LogRank.Of([[], []]).Cautions);
        Assert.Throws<ArgumentException>(() => LogRank.Of([HoldData.Treated]));
    }
}
