using CsCheck;
using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

public sealed class BrierPartsTests
{
    [Fact]
    public void Of_TableOfWilks_GivesMurphysParts()
    {
        // Source: [Wilks2006] table 7.3; the parts recomputed from it in R, ten digits.
        var parts = BrierParts.Of(ForecastData.Wilks);
        Assert.Equal(.000827616, parts.ReliabilityFraction!.Value, 1e-9);
        Assert.Equal(.062786628, parts.ResolutionFraction!.Value, 1e-9);
        Assert.Equal(.135420052, parts.UncertaintyFraction!.Value, 1e-9);
        Assert.Equal(.073461040, parts.BrierFraction!.Value, 1e-9);
        Assert.Equal((0.0, 0.0), (parts.WithinVarianceFraction!.Value, parts.WithinCovarianceFraction!.Value));
        Assert.Equal(12, parts.Groups.Count);
        Assert.Equal(.277, parts.Groups[4].ObservedFraction, 1e-12);
    }

    [Fact]
    public void Of_FourTrialsByHand_GivesTheirParts()
    {
        // By hand: at .25 one of two, at .75 two of two; base rate 3/4. Reliability (1/16 + 1/16)/2, resolution (1/16 + 1/16)/2, uncertainty 3/16.
        Forecast[] trials = [new(.25, 1, 2), new(.75, 2, 2)];
        var parts = BrierParts.Of(trials);
        Assert.Equal((1 / 16.0, 1 / 16.0, 3 / 16.0, 3 / 16.0), (parts.ReliabilityFraction!.Value, parts.ResolutionFraction!.Value, parts.UncertaintyFraction!.Value, parts.BrierFraction!.Value));
        Assert.Equal(PredictionCautions.FewTrials, parts.Cautions);
        Assert.False(parts.Groups[0].IsShown);
        Assert.Equal(WilsonInterval.Of(1, 2, .9), parts.Groups[0].Range(.9));

        // One range for both: mean .5, observed 3/4: reliability 1/16, no resolution, variance within 1/16, covariance 2 · (1/4 · 1/4 · ...) = 1/8.
        var one = BrierParts.Of(trials, []);
        Assert.Equal((1 / 16.0, 0.0, 1 / 16.0, 1 / 8.0), (one.ReliabilityFraction!.Value, one.ResolutionFraction!.Value, one.WithinVarianceFraction!.Value, one.WithinCovarianceFraction!.Value));
    }

    [Fact]
    public void Of_AnyForecastsInAnyRanges_SumsToTheBrierScore() => Gen.Select(ForecastData.Any, Gen.Int[1, 9].Array[0, 4]).Sample((forecasts, tenths) =>
    {
        var edges = tenths.Distinct().Order().Select(t => t / 10.0).ToArray();
        var score = PredictionScores.Of(forecasts).BrierFraction!.Value;
        foreach (var parts in new[] { BrierParts.Of(forecasts), BrierParts.Of(forecasts, edges) })
        {
            Assert.Equal(score, parts.BrierFraction!.Value, 1e-14);
            var sum = parts.ReliabilityFraction!.Value - parts.ResolutionFraction!.Value + parts.UncertaintyFraction!.Value
                + parts.WithinVarianceFraction!.Value - parts.WithinCovarianceFraction!.Value;
            Assert.Equal(score, sum, 1e-14);
            Assert.True(parts is { ReliabilityFraction: >= 0, ResolutionFraction: >= 0, WithinVarianceFraction: >= 0 });
            Assert.Equal(forecasts.Sum(f => f.TrialCount), parts.Groups.Sum(g => g.TrialCount));
        }
        // The plain second version of two parts, trial by trial, for the chances said.
        var trials = ForecastData.Trials(forecasts);
        var rate = trials.Average(t => t.Came);
        double Share(double said) => trials.Where(t => t.Said == said).Average(t => t.Came);
        var exact = BrierParts.Of(forecasts);
        Assert.Equal(trials.Average(t => Math.Pow(t.Said - Share(t.Said), 2)), exact.ReliabilityFraction!.Value, 1e-12);
        Assert.Equal(trials.Average(t => Math.Pow(Share(t.Said) - rate, 2)), exact.ResolutionFraction!.Value, 1e-12);
        Assert.Equal((0.0, 0.0), (exact.WithinVarianceFraction!.Value, exact.WithinCovarianceFraction!.Value));
    });

    [Fact]
    public void Of_ChanceOnAnEdge_BelongsToTheUpperRange()
    {
        var parts = BrierParts.Of([new(.5, 1, 1), new(.4, 0, 1), new(1, 1, 1)], [.5]);
        Assert.Equal([1, 2], parts.Groups.Select(g => g.TrialCount));
    }

    [Fact]
    public void Of_NothingOrBadEdges_SaysSo()
    {
        Assert.Equal(PredictionCautions.NoTrials, BrierParts.Of([]).Cautions);
        Assert.Null(BrierParts.Of([]).BrierFraction);
        Assert.Throws<ArgumentException>(() => BrierParts.Of(ForecastData.Five, [.5, .5]));
        Assert.Throws<ArgumentException>(() => BrierParts.Of(ForecastData.Five, [1]));
        Assert.Throws<ArgumentException>(() => BrierParts.Of(ForecastData.Five, [double.NaN]));
    }
}
