using CsCheck;
using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

public sealed class OptimismAndLuckTests
{
    private static readonly Gen<ExpectedSet[]> Sets = Gen.Select(Gen.Int[1, 4], Gen.Int[1, 9]).SelectMany((n, tenths) =>
        Gen.Select(Gen.Int[0, n], Gen.Int[0, n]).Select((k, s) => new ExpectedSet(k, s, n, tenths / 10.0))).Array[1, 3];

    [Fact]
    public void Of_GoodPredictionBadLuck_BlamesTheLuck()
    {
        // By hand: 4 of 5 said at a chance of .8, 2 came: no optimism, luck −2/5, usual luck √(.16/5); so few: .8^0 .2^5 + 5 · .8 · .2^4 + 10 · .64 · .008 = .05792.
        var apart = OptimismAndLuck.Of([new(4, 2, 5, .8)])!.Value;
        Assert.Equal(0, apart.OptimismFraction, 1e-15);
        Assert.Equal(-.4, apart.LuckFraction, 1e-15);
        Assert.Equal(Math.Sqrt(.16 / 5), apart.UsualLuckFraction, 1e-15);
        Assert.Equal(.05792, apart.SoFewFraction, 1e-14);
        Assert.Equal(1 - .00672, apart.SoManyFraction, 1e-14);
    }

    [Fact]
    public void Of_OneChanceThroughout_IsTheBinomialLaw() => Gen.Select(Gen.Int[1, 60], Gen.Int[1, 9]).SelectMany((n, tenths) =>
        Gen.Int[0, n].Select(s => (n, tenths, s))).Sample(x =>
    {
        var p = x.tenths / 10.0;
        var apart = OptimismAndLuck.Of([new(0, x.s, x.n, p)])!.Value;
        Assert.Equal(x.s == x.n ? 1 : Binomial.CDF(p, x.n, x.s), apart.SoFewFraction, 1e-12);
        Assert.Equal(1 - (x.s == 0 ? 0 : Binomial.CDF(p, x.n, x.s - 1)), apart.SoManyFraction, 1e-12);
    });

    [Fact]
    public void Of_AnySets_AgreesWithAllWaysCounted() => Sets.Sample(sets =>
    {
        var apart = OptimismAndLuck.Of(sets)!.Value;
        // The plain second version: every way the trials can go, one by one.
        var chances = sets.SelectMany(s => Enumerable.Repeat(s.ModelFraction, s.TrialCount)).ToArray();
        var came = sets.Sum(s => s.SuccessCount);
        double few = 0, many = 0, mean = 0, square = 0;
        for (var way = 0; way < 1 << chances.Length; way++)
        {
            var chance = chances.Select((p, i) => (way >> i & 1) == 1 ? p : 1 - p).Aggregate(1.0, (a, b) => a * b);
            var count = int.PopCount(way);
            if (count <= came) few += chance;
            if (count >= came) many += chance;
            (mean, square) = (mean + chance * count, square + chance * count * count);
        }
        Assert.Equal(few, apart.SoFewFraction, 1e-12);
        Assert.Equal(many, apart.SoManyFraction, 1e-12);
        Assert.Equal(Math.Sqrt(square - mean * mean) / chances.Length, apart.UsualLuckFraction, 1e-9);
        Assert.Equal((came - mean) / chances.Length, apart.LuckFraction, 1e-12);
        // What was wrong in all is optimism less luck.
        var bias = PredictionScores.Of(sets.Select(s => new Forecast((double)s.PredictedCount / s.TrialCount, s.SuccessCount, s.TrialCount)).ToArray()).BiasFraction!.Value;
        Assert.Equal(bias, apart.OptimismFraction - apart.LuckFraction, 1e-12);
    });

    [Fact]
    public void Of_NothingOrOutsideItsRange_SaysSo()
    {
        Assert.Null(OptimismAndLuck.Of([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => OptimismAndLuck.Of([new(1, 3, 2, .5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => OptimismAndLuck.Of([new(1, 1, 2, 0)]));
    }
}
