using CsCheck;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

public sealed class CalibrationCurveTests
{
    [Fact]
    public void Of_ExampleOfR_PoolsTheSameNeighbours()
    {
        // Source: [R2022] help of isoreg(): 1 0 4 3 3 5 4 2 0 becomes .5 .5 3 3 3 3 3 3 3, from memory and by hand; here as so many of 5.
        int[] successes = [1, 0, 4, 3, 3, 5, 4, 2, 0];
        var curve = CalibrationCurve.Of(successes.Select((s, i) => new Forecast(i / 10.0, s, 5)).ToArray());
        Assert.Equal([new(0, .1, 10, 1), new(.2, .8, 35, 21)], curve.Blocks);
        Assert.Equal([.1, .6], curve.Blocks.Select(b => b.ObservedFraction));
        Assert.True(curve.Blocks[0].IsShown);
    }

    [Fact]
    public void Of_FiveTrialsByHand_GivesItsParts()
    {
        // By hand: 0 at .3, then 1 at .5 and 0 at .6 pooled to 1/2, then 1 and 1. The curve scores (0 + .25 + .25 + 0)/5 = .1; base .24; Brier .15.
        var curve = CalibrationCurve.Of(ForecastData.Five);
        Assert.Equal(.05, curve.MiscalibrationFraction!.Value, 1e-15);
        Assert.Equal(.14, curve.DiscriminationFraction!.Value, 1e-15);
        Assert.Equal(.24, curve.UncertaintyFraction!.Value, 1e-15);
        Assert.Equal(.15, curve.BrierFraction!.Value, 1e-15);
    }

    [Fact]
    public void Of_TableOfWilks_KeepsItsShapeButForTheLastTwo()
    {
        // Source: [Wilks2006] table 7.3: the shares rise all the way but for .934 and .933.
        var curve = CalibrationCurve.Of(ForecastData.Wilks);
        Assert.Equal(11, curve.Blocks.Count);
        Assert.Equal((.9, 1.0), (curve.Blocks[^1].LowFraction, curve.Blocks[^1].HighFraction));
        // Where nothing is pooled the parts are Murphy's; here they differ by what the last two shares are apart.
        var parts = BrierParts.Of(ForecastData.Wilks);
        var apart = .0170 * .0203 / .0373 * 1e-6;
        Assert.Equal(parts.ReliabilityFraction!.Value - apart, curve.MiscalibrationFraction!.Value, 1e-12);
        Assert.Equal(parts.ResolutionFraction!.Value - apart, curve.DiscriminationFraction!.Value, 1e-12);
    }

    [Fact]
    public void Of_AnyForecasts_AgreesWithTheLargestOfSmallestMeans() => ForecastData.Any.Sample(forecasts =>
    {
        var curve = CalibrationCurve.Of(forecasts);
        var ties = forecasts.GroupBy(f => f.PredictedFraction).OrderBy(g => g.Key).Select(g => (Said: g.Key, N: g.Sum(f => f.TrialCount), S: g.Sum(f => f.SuccessCount))).ToList();
        for (var i = 0; i < ties.Count; i++)
        {
            // The plain second version. Source: [Barlow1972] theorem 1.11: the curve at a chance is the largest, over starts at or before it, of the smallest
            // mean, over ends at or after it.
            var best = Enumerable.Range(0, i + 1).Max(from => Enumerable.Range(i, ties.Count - i).Min(to =>
                ties.Skip(from).Take(to - from + 1).Sum(t => t.S) / (double)ties.Skip(from).Take(to - from + 1).Sum(t => t.N)));
            var block = curve.Blocks.Single(b => b.LowFraction <= ties[i].Said && ties[i].Said <= b.HighFraction);
            Assert.Equal(best, block.ObservedFraction, 1e-12);
        }
    });

    [Fact]
    public void Of_AnyForecasts_RisesAndItsPartsSum() => ForecastData.Any.Sample(forecasts =>
    {
        var curve = CalibrationCurve.Of(forecasts);
        Assert.True(curve.Blocks.Zip(curve.Blocks.Skip(1)).All(p => p.First.ObservedFraction < p.Second.ObservedFraction && p.First.HighFraction < p.Second.LowFraction));
        Assert.Equal(curve.BrierFraction!.Value, curve.MiscalibrationFraction!.Value - curve.DiscriminationFraction!.Value + curve.UncertaintyFraction!.Value, 1e-14);
        Assert.True(curve is { MiscalibrationFraction: >= 0, DiscriminationFraction: >= 0 });
        // Saying the curve's chances instead leaves nothing to recalibrate.
        var again = CalibrationCurve.Of(forecasts.Select(f => f with
        {
            PredictedFraction = curve.Blocks.Single(b => b.LowFraction <= f.PredictedFraction && f.PredictedFraction <= b.HighFraction).ObservedFraction,
        }).ToArray());
        Assert.Equal(0, again.MiscalibrationFraction!.Value, 1e-14);
        Assert.Equal(curve.DiscriminationFraction.Value, again.DiscriminationFraction!.Value, 1e-14);
        // Murphy's parts by single chances are never smaller: the best rising curve is a curve.
        var parts = BrierParts.Of(forecasts);
        Assert.True(curve.MiscalibrationFraction <= parts.ReliabilityFraction + 1e-14 && curve.DiscriminationFraction <= parts.ResolutionFraction + 1e-14);
    });

    [Fact]
    public void Of_Nothing_IsNoneWithACaution()
    {
        var curve = CalibrationCurve.Of([]);
        Assert.Equal((PredictionCautions.NoTrials, 0), (curve.Cautions, curve.Blocks.Count));
        Assert.Null(curve.MiscalibrationFraction);
    }
}
