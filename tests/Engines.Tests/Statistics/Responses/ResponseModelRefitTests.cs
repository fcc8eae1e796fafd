using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Refits in a lesson against fits from the beginning: laws, no source.</summary>
public sealed class ResponseModelRefitTests
{
    private static readonly ResponseOptions Point = new() { GridPupilCount = 0, ChoicePupilCount = 0 };

    // A unit's trials in the order of its lessons: the last of the list are the last that were entered.
    private static readonly Lazy<ResponseData> Class = new(() =>
    {
        var data = Tables.SimulatedClass();
        double[] doses = [2, 3, 5, 8, 12, 20];
        return new(data.Pupils, data.Levels, [.. data.Trials.Select((t, k) => t.Successes == 0 && k % 3 == 0 ? t with { HeldS = Math.Round(doses[t.Level % 6] * (0.3 + k % 7 * 0.1), 1) } : t).OrderBy(t => t.Lesson)]);
    });

    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    public void Refit_AfterMoreTrials_IsTheFitWithoutTheGrid(int added)
    {
        var data = Class.Value;
        var before = ResponseModel.Fit(Upto(data.Trials.Count - added));
        var (fresh, refit) = (ResponseModel.Fit(data, Point), ResponseModel.Refit(before, data));
        Assert.True(refit.RoundCount <= (added == 1 ? 4 : 6), $"{refit.RoundCount}");
        Assert.False(refit.Cautions.HasFlag(ResponseCaution.NotConverged));
        AreNear(fresh, refit, 0.02, 0.99, 1.01);
        Assert.Equal(before.Choice, refit.Choice);
    }

    [Fact]
    public void Refit_AgainstTheFullFit_IsNearButALittleTooSure()
    {
        var data = Class.Value;
        var refit = ResponseModel.Refit(ResponseModel.Fit(Upto(data.Trials.Count - 5)), data);
        AreNear(ResponseModel.Fit(data), refit, 0.2, 0.8, 1.05);
    }

    [Fact]
    public void Refit_TrialByTrialThroughALesson_DoesNotDriftAway()
    {
        var data = Class.Value;
        var count = data.Trials.Count;
        var fit = ResponseModel.Fit(Upto(count - 120));
        for (var k = count - 119; k <= count; k++) fit = ResponseModel.Refit(fit, Upto(k));
        AreNear(ResponseModel.Fit(data, Point), fit, 0.05, 0.99, 1.01);
    }

    [Fact]
    public void Refit_OfAnotherClass_BeginsAnew()
    {
        var data = Class.Value;
        var other = ResponseModel.Fit(new(Tables.Pupils(2), Tables.Levels(2), [new(0, 0, 0, 1, 2), new(1, 1, 0, 1, 2)]), Point);
        AreNear(ResponseModel.Fit(data, Point), ResponseModel.Refit(other, data), 1e-9, 1 - 1e-9, 1 + 1e-9);
    }

    private static ResponseData Upto(int count) => new(Class.Value.Pupils, Class.Value.Levels, [.. Class.Value.Trials.Take(count)]);

    private static void AreNear(ResponseFit one, ResponseFit other, double gapSd, double least, double most)
    {
        void Check(Estimate a, Estimate b)
        {
            Assert.Equal(0, (b.MeanLogits - a.MeanLogits) / a.SdLogits, gapSd);
            Assert.InRange(b.SdLogits / a.SdLogits, least, most);
        }
        for (var i = 0; i < one.Connectedness.PupilCount; i++) Check(one.Ability(i, one.LastLesson), other.Ability(i, one.LastLesson));
        for (var j = 0; j < one.Connectedness.LevelCount; j++) Check(one.Difficulty(j)!.Value, other.Difficulty(j)!.Value);
        for (var i = 0; i < one.Connectedness.PupilCount; i += 4) Check(one.Chance(i, i % one.Connectedness.LevelCount, one.LastLesson)!.Logit, other.Chance(i, i % one.Connectedness.LevelCount, one.LastLesson)!.Logit);
    }
}
