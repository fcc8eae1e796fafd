using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>The middle of the class is a sum of what the fit says anyway: the tests add it up another way.</summary>
public sealed class ResponseModelMiddleTests
{
    [Fact]
    public void MiddleChance_FirstLesson_IsTheDifficultyTurnedRound()
    {
        var fit = ResponseModel.Fit(Tables.SimulatedClass());
        var (middle, difficulty) = (fit.MiddleChance(7, 0)!, fit.Difficulty(7)!.Value);
        Assert.Equal(-difficulty.MeanLogits, middle.Logit.MeanLogits, 1e-12);
        Assert.Equal(difficulty.SdLogits, middle.Logit.SdLogits, 1e-12);
        Assert.Equal(difficulty.DataShareFraction, middle.Logit.DataShareFraction, 1e-12);
    }

    [Fact]
    public void MiddleChance_LaterLesson_AddsTheClassesGrowthAndIsLessSureFarAhead()
    {
        var fit = ResponseModel.Fit(Tables.SimulatedClass());
        var growth = fit.Coefficients.Single(c => c.Kind == CoefficientKind.Growth).Value.MeanLogits;
        Assert.Equal(-fit.Difficulty(7)!.Value.MeanLogits + 5 * growth, fit.MiddleChance(7, 5)!.Logit.MeanLogits, 1e-12);
        Assert.True(fit.MiddleChance(7, 40)!.Logit.SdLogits > fit.MiddleChance(7, 5)!.Logit.SdLogits);
        Assert.Equal(fit.MiddleChance(7, 0)!.Logit.DataShareFraction, fit.MiddleChance(7, 40)!.Logit.DataShareFraction, 1e-12);
    }

    [Fact]
    public void MiddleChance_ThreeOfFourPredicted_StandsAtTheClassesMeanOfWhatWasKnown()
    {
        var pupils = new[] { .9, .6, .3 }.Select(p => new ResponsePupil(new FirstPrediction(0, p))).Append(new ResponsePupil()).ToList();
        var trials = Enumerable.Range(0, 4).SelectMany(i => new[] { new ResponseTrial(i, 0, 0, 3 - i % 3, 4), new ResponseTrial(i, 1, 0, 2, 4) }).ToList();
        var fit = ResponseModel.Fit(new ResponseData(pupils, Tables.Levels(2), trials));
        // Predictions are centred over those who made one, so only the one in four who made none moves the mean.
        var without = fit.Coefficients.Single(c => c.Kind == CoefficientKind.NoPrediction).Value.MeanLogits;
        Assert.Equal(-fit.Difficulty(0)!.Value.MeanLogits + without / 4, fit.MiddleChance(0, 0)!.Logit.MeanLogits, 1e-12);
    }

    [Fact]
    public void MiddleChance_NobodyTriedTheLevel_SaysSo()
    {
        var fit = ResponseModel.Fit(new ResponseData(Tables.Pupils(3), Tables.Levels(2), [new(0, 0, 0, 3, 5), new(1, 0, 0, 1, 5), new(2, 0, 0, 4, 5)]));
        Assert.Equal(15, fit.MiddleChance(0, 0)!.TrialCount);
        Assert.Equal(0, fit.MiddleChance(1, 0)!.TrialCount);
        Assert.True(fit.MiddleChance(1, 0)!.Logit.Cautions.HasFlag(ResponseCaution.NoTrials | ResponseCaution.MostlyAssumption));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.MiddleChance(0, -1));
    }

    [Fact]
    public void MiddleChance_NothingAssumedAndNeverTried_IsNone()
    {
        var data = new ResponseData(Tables.Pupils(3), Tables.Levels(2), [new(0, 0, 0, 1, 2), new(1, 0, 0, 1, 2), new(2, 0, 0, 1, 2)]);
        Assert.Null(ResponseModel.Fit(data, new ResponseOptions { IsFlat = true }).MiddleChance(1, 0));
    }
}
