using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class PredictionBiasTests
{
    private static readonly Gen<CountPrediction[]> Sets = Gen.Int[1, 10]
        .SelectMany(n => Gen.Select(Gen.Int[0, n], Gen.Int[0, n]).Select((p, r) => new CountPrediction(p, r, n)))
        .Array[1, 20];

    [Fact]
    public void Of_FiveSetsByHand_GivesBiasAndAccuracy()
    {
        // By hand: errors 2, 0, 3, 0, 1; mean 6/5, mean absolute 6/5, of all 25 trials 6/25.
        var bias = PredictionBias.Of([new(5, 3, 5), new(4, 4, 5), new(5, 2, 5), new(3, 3, 5), new(5, 4, 5)], 1)!.Value;
        Assert.Equal(new PredictionBias(5, 1.2, 1.2, 0.24, PredictionDirection.Over), bias);
    }

    [Fact]
    public void Of_ErrorsThatCancel_HaveNoBiasButADistance()
    {
        var bias = PredictionBias.Of([new(5, 3, 5), new(1, 3, 5)], 1)!.Value;
        Assert.Equal((0, 2, PredictionDirection.Close), (bias.MeanErrorCount, bias.MeanAbsoluteErrorCount, bias.Direction));
    }

    [Theory]
    [InlineData(4, 3, PredictionDirection.Close)]
    [InlineData(5, 3, PredictionDirection.Over)]
    [InlineData(1, 3, PredictionDirection.Under)]
    public void Of_AtTheTolerance_IsClose(int predicted, int result, PredictionDirection expected) =>
        Assert.Equal(expected, PredictionBias.Of([new(predicted, result, 5)], 1)!.Value.Direction);

    [Fact]
    public void Of_NoSet_IsNone()
    {
        Assert.Null(PredictionBias.Of([], 1));
        Assert.Null(HoldPredictionBias.Of([], 1));
    }

    [Fact]
    public void Of_ImpossibleSet_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionBias.Of([new(6, 3, 5)], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionBias.Of([new(3, 6, 5)], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionBias.Of([new(0, 0, 0)], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionBias.Of([], -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldPredictionBias.Of([new(double.NaN, 3)], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldPredictionBias.Of([new(3, -1)], 1));
    }

    [Fact]
    public void Of_AnySets_AgreesWithExactDecimals() => Sets.Sample(sets =>
    {
        var bias = PredictionBias.Of(sets, 1)!.Value;
        var errors = sets.Select(s => (decimal)s.PredictedCount - s.ResultCount).ToList();
        Assert.Equal((double)(errors.Sum() / sets.Length), bias.MeanErrorCount, 1e-12);
        Assert.Equal((double)(errors.Sum(Math.Abs) / sets.Length), bias.MeanAbsoluteErrorCount, 1e-12);
        Assert.Equal((double)(errors.Sum() / sets.Sum(s => s.TrialCount)), bias.ErrorFraction, 1e-12);
    });

    [Fact]
    public void Of_PredictionAndResultSwapped_TurnsTheSign() => Sets.Sample(sets =>
    {
        var there = PredictionBias.Of(sets, 1)!.Value;
        var back = PredictionBias.Of(sets.Select(s => new CountPrediction(s.ResultCount, s.PredictedCount, s.TrialCount)).ToList(), 1)!.Value;
        Assert.Equal(there.MeanErrorCount, -back.MeanErrorCount);
        Assert.Equal(there.MeanAbsoluteErrorCount, back.MeanAbsoluteErrorCount);
        Assert.True(Math.Abs(there.MeanErrorCount) <= there.MeanAbsoluteErrorCount);
    });

    [Fact]
    public void Of_HoldsInWholeSeconds_IsTheSameAsCounts() => Sets.Sample(sets =>
    {
        var counts = PredictionBias.Of(sets, 1)!.Value;
        var holds = HoldPredictionBias.Of(sets.Select(s => new HoldPrediction(s.PredictedCount, s.ResultCount)).ToList(), 1)!.Value;
        Assert.Equal(counts.MeanErrorCount, holds.MeanErrorS, 1e-12);
        Assert.Equal(counts.MeanAbsoluteErrorCount, holds.MeanAbsoluteErrorS, 1e-12);
    });
}
