using CsCheck;
using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

public sealed class PredictionScoresTests
{
    [Fact]
    public void Of_FiveTrialsByHand_GivesAllScores()
    {
        // By hand: squares .01 .04 .36 .25 .09, mean .15; base rate 3/5, so .24 to beat; skill 1 − .15/.24 = .375. Sum of chances 3.1.
        var scores = PredictionScores.Of(ForecastData.Five);
        Assert.Equal(.15, scores.BrierFraction!.Value, 1e-15);
        Assert.Equal(.375, scores.SkillFraction!.Value, 1e-14);
        Assert.Equal(.02, scores.BiasFraction!.Value, 1e-15);
        Assert.Equal((.1 + .2 + .6 + .5 + .3) / 5, scores.AbsoluteErrorFraction!.Value, 1e-15);
        Assert.Equal(-(Math.Log(.9) + Math.Log(.8) + Math.Log(.4) + Math.Log(.5) + Math.Log(.7)) / 5, scores.LogLossNats!.Value, 1e-15);
        Assert.Equal((5, 5, PredictionCautions.FewTrials), (scores.SetCount, scores.TrialCount, scores.Cautions));
        Assert.Equal(PredictionDirection.Close, scores.Direction(.05));
        Assert.Equal(PredictionDirection.Over, scores.Direction(.01));
    }

    [Fact]
    public void Of_TableOfWilks_GivesItsBrierScoreAndSkill()
    {
        // Source: [Wilks2006] table 7.3; .0734610 and .4575 recomputed from it in R, to ten digits.
        var scores = PredictionScores.Of(ForecastData.Wilks);
        Assert.Equal(.073461040, scores.BrierFraction!.Value, 1e-9);
        Assert.Equal(.45753203436, scores.SkillFraction!.Value, 1e-9);
        Assert.Equal(.1615034, scores.BaseRateFraction!.Value, 1e-9);
        Assert.Equal(PredictionCautions.CertainAndWrong, scores.Cautions);
        Assert.Null(scores.LogLossNats);
    }

    [Fact]
    public void Of_PredictedCounts_AgreesWithTheirBias()
    {
        // By hand: 5, 4, 5, 3, 5 of 5 predicted, 3, 4, 2, 3, 4 came: 1.2 trials of 5 too many, and as far off.
        int[] said = [5, 4, 5, 3, 5], came = [3, 4, 2, 3, 4];
        var scores = PredictionScores.Of(said.Zip(came, (p, r) => new Forecast(p / 5.0, r, 5)).ToArray());
        Assert.Equal(1.2 / 5, scores.BiasFraction!.Value, 1e-15);
        Assert.Equal(1.2 / 5, scores.AbsoluteErrorFraction!.Value, 1e-15);
        var bias = PredictionBias.Of(said.Zip(came, (p, r) => new CountPrediction(p, r, 5)).ToArray(), 1)!.Value;
        Assert.Equal(bias.ErrorFraction, scores.BiasFraction.Value, 1e-15);
        Assert.Equal(bias.Direction, scores.Direction(.2));
    }

    [Fact]
    public void Of_AnyForecasts_AgreesTrialByTrial() => ForecastData.Any.Sample(forecasts =>
    {
        var scores = PredictionScores.Of(forecasts);
        var trials = ForecastData.Trials(forecasts);
        Assert.Equal(trials.Count, scores.TrialCount);
        Assert.Equal(trials.Average(t => t.Said - t.Came), scores.BiasFraction!.Value, 1e-12);
        Assert.Equal(trials.Average(t => Math.Pow(t.Said - t.Came, 2)), scores.BrierFraction!.Value, 1e-12);
        var rate = trials.Average(t => t.Came);
        Assert.Equal(rate is 0 or 1, scores.SkillFraction is null);
        if (scores.SkillFraction is { } skill)
            Assert.Equal(1 - scores.BrierFraction.Value / trials.Average(t => Math.Pow(rate - t.Came, 2)), skill, 1e-10);
        var loss = trials.Average(t => -Math.Log(t.Came == 1 ? t.Said : 1 - t.Said));
        if (scores.LogLossNats is { } own) Assert.Equal(loss, own, 1e-12);
        else Assert.Equal(double.PositiveInfinity, loss);
    });

    [Fact]
    public void Of_SuccessAndFailureNamedTheOtherWay_TurnsOnlyTheBias() => ForecastData.Any.Sample(forecasts =>
    {
        var (one, other) = (PredictionScores.Of(forecasts), PredictionScores.Of(
            forecasts.Select(f => new Forecast(1 - f.PredictedFraction, f.TrialCount - f.SuccessCount, f.TrialCount)).ToArray()));
        Assert.Equal(-one.BiasFraction!.Value, other.BiasFraction!.Value, 1e-12);
        Assert.Equal(one.BrierFraction!.Value, other.BrierFraction!.Value, 1e-12);
        Assert.Equal(one.AbsoluteErrorFraction!.Value, other.AbsoluteErrorFraction!.Value, 1e-12);
        Assert.Equal(one.Cautions, other.Cautions);
    });

    [Fact]
    public void Of_NothingToScore_IsNoneWithCautions()
    {
        Assert.Equal(new PredictionScores(0, 0, null, null, null, null, null, null, PredictionCautions.NoTrials), PredictionScores.Of([new(.5, 0, 0)]));
        Assert.Null(PredictionScores.Of([]).Direction(.1));
        var all = PredictionScores.Of([new(.9, 12, 12)]);
        Assert.Null(all.SkillFraction);
        Assert.Equal(PredictionCautions.OneOutcome, all.Cautions);
        Assert.Equal(0, PredictionScores.Of([new(1, 12, 12)]).LogLossNats);
    }

    [Theory]
    [InlineData(1.1, 1, 2)]
    [InlineData(double.NaN, 1, 2)]
    [InlineData(.5, 3, 2)]
    [InlineData(.5, 0, -1)]
    public void Of_OutsideItsRange_Throws(double said, int successes, int trials)
    {
        Forecast[] forecasts = [new(said, successes, trials)];
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionScores.Of(forecasts));
        Assert.Throws<ArgumentOutOfRangeException>(() => BrierParts.Of(forecasts));
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationCurve.Of(forecasts));
        Assert.Throws<ArgumentOutOfRangeException>(() => GoodmanKruskalGamma.Of(forecasts));
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionScores.Of([]).Direction(-1));
    }

    [Fact]
    public void Gamma_SixTrialsByHand_IsAHalf()
    {
        // By hand: confidence 5, 4, 3, 2, 1, 4 of 5; came 1, 1, 0, 1, 0, 0: 6 pairs in order, 2 reversed, 1 tied.
        Forecast[] trials = [new(1, 1, 1), new(.8, 1, 1), new(.6, 0, 1), new(.4, 1, 1), new(.2, 0, 1), new(.8, 0, 1)];
        Assert.Equal(new GoodmanKruskalGamma(.5, 6, 2), GoodmanKruskalGamma.Of(trials));
        Assert.Null(GoodmanKruskalGamma.Of([new(.5, 1, 2)]).GammaFraction);
        Assert.Null(GoodmanKruskalGamma.Of([new(.5, 2, 2), new(.6, 1, 1)]).GammaFraction);
    }

    [Fact]
    public void Gamma_OfAnyForecasts_AgreesPairByPair() => ForecastData.Any.Sample(forecasts =>
    {
        var trials = ForecastData.Trials(forecasts);
        var pairs = (from a in trials from b in trials where a.Came > b.Came select Math.Sign(a.Said - b.Said)).ToList();
        var (ordered, reversed) = (pairs.Count(p => p > 0), pairs.Count(p => p < 0));
        Assert.Equal(new GoodmanKruskalGamma(ordered + reversed == 0 ? null : (double)(ordered - reversed) / (ordered + reversed), ordered, reversed), GoodmanKruskalGamma.Of(forecasts));
    });
}
