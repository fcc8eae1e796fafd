using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ResponseModelLawsTests
{
    private static readonly ResponseOptions Tight = new() { ToleranceSd = 1e-8 };

    private static readonly Gen<ResponseData> Classes = TinyClasses.Of(false, 3, true);

    [Fact]
    public void Fit_PupilsAndLevelsInAnotherOrder_IsTheSame() => Classes.Sample(data =>
    {
        int[] pupils = [2, 0, 1], levels = [1, 2, 0];
        // Who was at place p is now at place pupils[p].
        var moved = new ResponseData(
            [.. Enumerable.Range(0, 3).Select(k => data.Pupils[Array.IndexOf(pupils, k)]).Select(p => p.Prediction is { } q ? p with { Prediction = q with { Level = levels[q.Level] } } : p)],
            [.. Enumerable.Range(0, 3).Select(k => data.Levels[Array.IndexOf(levels, k)])],
            [.. data.Trials.Reverse().Select(t => t with { Pupil = pupils[t.Pupil], Level = levels[t.Level] })]);
        var (one, other) = (ResponseModel.Fit(data, Tight), ResponseModel.Fit(moved, Tight));
        Assert.Equal(one.EvidenceNats!.Value, other.EvidenceNats!.Value, 1e-6);
        for (var k = 0; k < 3; k++)
        {
            Close(one.Ability(k, 2), other.Ability(pupils[k], 2), 1e-5);
            Close(one.Difficulty(k)!.Value, other.Difficulty(levels[k])!.Value, 1e-5);
        }
    }, iter: 10);

    [Fact]
    public void Fit_TrialsSplitAndShuffled_IsTheSameToTheBit()
    {
        var data = Tables.SimulatedClass();
        var grouped = data.Trials.GroupBy(t => (t.Pupil, t.Level, t.Lesson)).OrderByDescending(g => g.Key.Level)
            .Select(g => new ResponseTrial(g.Key.Pupil, g.Key.Level, g.Key.Lesson, g.Sum(t => t.Successes), g.Sum(t => t.Trials))).ToList();
        var (one, other) = (ResponseModel.Fit(data), ResponseModel.Fit(new(data.Pupils, data.Levels, grouped)));
        for (var i = 0; i < 30; i++) Assert.Equal(one.Ability(i, 5), other.Ability(i, 5));
    }

    [Fact]
    public void Fit_SuccessAndFailureSwapped_IsTheMirrorImage() => Classes.Sample(data =>
    {
        // Without doses, orders or predictions nothing in the model knows up from down.
        ResponseData Plain(Func<ResponseTrial, ResponseTrial> change) => new(Tables.Pupils(3), [.. Enumerable.Range(0, 3).Select(j => new ResponseLevel(j / 2))], [.. data.Trials.Select(change)]);
        var (one, other) = (ResponseModel.Fit(Plain(t => t), Tight), ResponseModel.Fit(Plain(t => t with { Successes = t.Trials - t.Successes }), Tight));
        for (var k = 0; k < 3; k++)
        {
            Assert.Equal(one.Ability(k, 1).MeanLogits, -other.Ability(k, 1).MeanLogits, 1e-5);
            Assert.Equal(one.Difficulty(k)!.Value.MeanLogits, -other.Difficulty(k)!.Value.MeanLogits, 1e-5);
            Assert.Equal(one.Ability(k, 1).SdLogits, other.Ability(k, 1).SdLogits, 1e-5);
        }
    }, iter: 10);

    [Fact]
    public void Fit_OrderMovedByAConstant_MovesOnlyTheMiddle() => Classes.Sample(data =>
    {
        // The order is taken as it is, and the middle expected lower by as much as the order was raised.
        ResponseOptions With(double middle) => Tight with { Priors = new() { Middle = new(middle, 3), Order = new(1, 1e-5) } };
        var moved = new ResponseData(data.Pupils, [.. data.Levels.Select(l => l with { OrderLogits = l.OrderLogits + 2 })], data.Trials);
        var (one, other) = (ResponseModel.Fit(data, With(0)), ResponseModel.Fit(moved, With(-2)));
        for (var k = 0; k < 3; k++)
        {
            Close(one.Ability(k, 0), other.Ability(k, 0), 1e-3);
            Close(one.Difficulty(k)!.Value, other.Difficulty(k)!.Value, 1e-3);
        }
    }, iter: 10);

    [Fact]
    public void Fit_EverythingSeenTwice_KnowsMore()
    {
        var data = Tables.SimulatedClass();
        var twice = new ResponseData(data.Pupils, data.Levels, [.. data.Trials, .. data.Trials]);
        var given = Tables.ClassOptions(1.2, 0.7);
        var (once, more) = (ResponseModel.Fit(data, given), ResponseModel.Fit(twice, given));
        for (var i = 0; i < 30; i++)
        {
            Assert.True(more.Ability(i, 0).SdLogits < once.Ability(i, 0).SdLogits);
            Assert.True(more.Ability(i, 0).DataShareFraction > once.Ability(i, 0).DataShareFraction);
        }
        for (var k = 0; k < 3; k++) Assert.True(more.Coefficients[k].Value.SdLogits < once.Coefficients[k].Value.SdLogits);
    }

    [Fact]
    public void Fit_LevelNobodyTried_BorrowsFromItsTask()
    {
        // Both tasks have a 5 s level; the class misses task 1 and manages task 0. A new 3 s level of task 1 must be expected to be harder than one of task 0.
        var levels = new[] { LevelDose.Hold(5), LevelDose.Hold(5), LevelDose.Hold(3), LevelDose.Hold(3) }.Select((d, j) => new ResponseLevel(j % 2, d)).ToList();
        var trials = Enumerable.Range(0, 20).SelectMany(i => new ResponseTrial[] { new(i, 0, 0, 3, 4), new(i, 1, 0, 1, 4) }).ToList();
        var fit = ResponseModel.Fit(new(Tables.Pupils(20), levels, trials));
        Assert.True(fit.Contrast(3, 2)!.Value.MeanLogits > 0.5);
        Assert.True(fit.Difficulty(3)!.Value.SdLogits > fit.Difficulty(1)!.Value.SdLogits);
        Assert.True(fit.Difficulty(3)!.Value.Cautions.HasFlag(ResponseCaution.NoTrials));
        // Where tasks share nothing, the new levels differ by nothing.
        var apart = ResponseModel.Fit(new(Tables.Pupils(20), levels, trials), new() { Priors = new() { TaskShareFraction = 0 } });
        Assert.Equal(0, apart.Contrast(3, 2)!.Value.MeanLogits, 1e-6);
    }

    [Fact]
    public void Fit_PredictionsThatCameTrue_EarnTheirWeight()
    {
        // Those who expected more did manage more: the coefficient rises above what was assumed, and a pupil without trials is placed by the prediction.
        var pupils = Enumerable.Range(0, 21).Select(i => new ResponsePupil(new FirstPrediction(0, i % 2 == 0 ? 0.9 : 0.3))).ToList();
        var trials = Enumerable.Range(0, 20).Select(i => new ResponseTrial(i, 0, 0, i % 2 == 0 ? 5 : 2, 6)).ToList();
        var fit = ResponseModel.Fit(new(pupils, Tables.Levels(1), trials));
        var weight = fit.Coefficients.Single(c => c.Kind == CoefficientKind.Prediction).Value;
        Assert.True(weight.MeanLogits > 0.4);
        Assert.True(fit.Ability(20, 0).MeanLogits > 0.2);
        Assert.True(fit.Ability(20, 0).SdLogits > fit.Ability(0, 0).SdLogits);
    }

    [Fact]
    public void Fit_Nothing_IsWhatWasAssumed()
    {
        var fit = ResponseModel.Fit(new([], [], []));
        Assert.True(fit.Cautions.HasFlag(ResponseCaution.NoTrials));
        var empty = ResponseModel.Fit(new(Tables.Pupils(2), Tables.Levels(2), []));
        Assert.Equal(0, empty.Ability(0, 0).MeanLogits, 1e-12);
        // By hand: a log-normal spread with median 1.2 and log sd .3 has mean square 1.2²·exp(2·.3²); five points see it to 1 in 100.
        Assert.Equal(1.44 * Math.Exp(0.18), Math.Pow(empty.Ability(0, 0).SdLogits, 2), 0.02);
        Assert.Equal(0, empty.Connectedness.GroupCount);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(62)]
    public void Fit_NodesOutOfRange_Throws(int nodes) => Assert.Throws<ArgumentException>(() => ResponseModel.Fit(new([], [], []), new() { NodeCount = nodes }));

    private static void Close(Estimate one, Estimate other, double tolerance)
    {
        Assert.Equal(one.MeanLogits, other.MeanLogits, tolerance);
        Assert.Equal(one.SdLogits, other.SdLogits, tolerance);
    }
}
