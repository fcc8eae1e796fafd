using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ResponseModelTimesTests
{
    private static readonly ResponseOptions Given = new() { AbilitySdLogits = 1.1, ResidualSdLogits = 0.6, DriftSdLogits = 0, NodeCount = 31, ToleranceSd = 1e-10 };

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.0)]
    public void Fit_TimesAndTicks_PeaksAsThePlainVersion(double firstMomentS) => TinyClasses.Of(true, 2, false).Sample(
        data => PlainComparison.Check(data, Given with { FirstMomentS = firstMomentS }, 2e-5, 2e-4), iter: 12);

    [Fact]
    public void Fit_WatchThatShowedNothing_StillKnowsTheSlope() =>
        // All that is known is a fall before .05 s; there is no lower end, and no other time.
        PlainComparison.Check(new(Tables.Pupils(3), [new(0, LevelDose.Hold(3)), new(0, LevelDose.Hold(8)), new(1)],
            [new(1, 1, 0, 2, 2), new(0, 0, 0, 0, 2), new(0, 1, 0, 1, 1), ResponseTrial.Single(0, 0, 0, false, 0)]), Given with { FirstMomentS = 0 }, 2e-5, 2e-4);

    [Fact]
    public void Fit_RemissionTimes_IsTheLogLogisticRegression()
    {
        // Weeks of remission of 21 patients with 6-mercaptopurine and 21 with placebo. Source: [Freireich1963] (as in R's MASS::gehan).
        // R 4.2.2, survival::survreg(Surv(time, cens) ~ treat, dist = "loglogistic"): intercept 3.158154, control −1.265463, scale .546553,
        // log-likelihood −107.661417. In the model's terms slope = 1/scale, middle at 5 = −(intercept − log 5)/scale, control = 1.265463/scale.
        // A patient who was still well when last seen held the dose "until then". Two hundred copies, so that what is assumed weighs nothing.
        (double Time, bool IsLost)[] treated =
        [
            (6, false), (6, false), (6, false), (6, true), (7, false), (9, true), (10, false), (10, true), (11, true), (13, false), (16, false),
            (17, true), (19, true), (20, true), (22, false), (23, false), (25, true), (32, true), (32, true), (34, true), (35, true),
        ];
        double[] control = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23];
        const int Copies = 200;
        const double Step = 0.01;
        List<ResponseLevel> levels = [new(0, LevelDose.Hold(40)) { Covariates = [0] }, new(1, LevelDose.Hold(40)) { Covariates = [1] }];
        var trials = new List<ResponseTrial>();
        var pupil = 0;
        for (var copy = 0; copy < Copies; copy++)
        {
            foreach (var (time, isLost) in treated)
            {
                var place = isLost ? levels.FindIndex(2, l => l.Dose == LevelDose.Hold(time)) : 0;
                if (place < 0)
                {
                    place = levels.Count;
                    levels.Add(new(0, LevelDose.Hold(time)) { Covariates = [0] });
                }
                trials.Add(ResponseTrial.Single(pupil++, place, 0, isLost, isLost ? null : time));
            }
            foreach (var time in control) trials.Add(ResponseTrial.Single(pupil++, 1, 0, false, time));
        }
        var fit = ResponseModel.Fit(new(Tables.Pupils(pupil), levels, trials), new()
        {
            AbilitySdLogits = 1e-3, ResidualSdLogits = 1e-6, DriftSdLogits = 0, FirstMomentS = 0, StopwatchStepS = Step, GridPupilCount = 0,
            Priors = new() { Middle = new(0, 100), DoseSlope = new(1, 100), LevelCovariate = new(0, 100), TaskShareFraction = 0 },
        });
        double Value(CoefficientKind kind) => fit.Coefficients.Single(c => c.Kind == kind).Value.MeanLogits;
        Assert.Equal(1 / 0.546553, Value(CoefficientKind.DoseSlope), 1e-3);
        Assert.Equal(-(3.158154 - Math.Log(5)) / 0.546553, Value(CoefficientKind.Middle), 2e-3);
        Assert.Equal(1.265463 / 0.546553, Value(CoefficientKind.LevelCovariate), 2e-3);
        // 30 patients fell within an interval as wide as the step.
        Assert.Equal(-107.661417, fit.LogLikelihoodNats / Copies - 30 * Math.Log(Step), 1e-3);
    }

    [Fact]
    public void Fit_FalseStarts_LeaveTheHoldsAlone()
    {
        // Three in ten failures end in the first moment, whatever the pupil can hold. Told apart, the slope of 1.5 comes back; read as holds, it does not.
        var data = Simulated(1.5, 0.3, 7);
        var (apart, asHolds) = (ResponseModel.Fit(data, Given), ResponseModel.Fit(data, Given with { FirstMomentS = 0 }));
        var (found, wrong) = (Slope(apart), Slope(asHolds));
        Assert.Equal(0, (found.MeanLogits - 1.5) / found.SdLogits, 2.5);
        Assert.True((1.5 - wrong.MeanLogits) / wrong.SdLogits > 4, $"{wrong} should have been pulled down.");
        Assert.InRange(apart.FalseStarts[0].Share(0.1, 0.6).WithinFraction, 0.9, 1);
    }

    [Fact]
    public void Fit_WithTimes_KnowsMoreThanFromTicks()
    {
        var data = Simulated(1.5, 0, 11);
        var ticks = new ResponseData(data.Pupils, data.Levels, [.. data.Trials.Select(t => t with { HeldS = null })]);
        var (timed, ticked) = (ResponseModel.Fit(data, Given), ResponseModel.Fit(ticks, Given));
        double Doubt(ResponseFit fit) => Enumerable.Range(0, data.Pupils.Count).Average(i => Math.Pow(fit.Ability(i, 0).SdLogits, 2));
        Assert.True(Doubt(timed) < 0.97 * Doubt(ticked));
        Assert.True(Slope(timed).SdLogits < 0.6 * Slope(ticked).SdLogits);
    }

    [Fact]
    public void Fit_TimeAgainstItsTick_CountsTheTick()
    {
        // Failed at 6 s of 4, and managed at 2 s of 4: both times contradict the tick. 4.0 s of 4, failed, may have been 3.96 s.
        LevelDose dose = LevelDose.Hold(4);
        ResponseData Data(params double?[] times) => new(Tables.Pupils(1), [new(0, dose), new(0, LevelDose.Hold(8))],
            [.. times.Select((t, k) => ResponseTrial.Single(0, 0, 0, k == 1, t)), ResponseTrial.Single(0, 1, 0, false, 5)]);
        var (times, ticks) = (ResponseModel.Fit(Data(6, 2), Given), ResponseModel.Fit(Data(null, null), Given));
        Assert.Equal(2, times.TimesLeftAsideCount);
        Assert.True(times.Cautions.HasFlag(ResponseCaution.TimesLeftAside));
        Assert.Equal(ticks.Ability(0, 0), times.Ability(0, 0));
        Assert.Equal(0, ResponseModel.Fit(Data(4, null), Given).TimesLeftAsideCount);
    }

    [Fact]
    public void Data_ImpossibleTimes_Throw()
    {
        ResponseData With(ResponseLevel level, ResponseTrial trial) => new(Tables.Pupils(1), [level], [trial]);
        Assert.Throws<ArgumentException>(() => With(new(0), ResponseTrial.Single(0, 0, 0, true, 3)));
        Assert.Throws<ArgumentException>(() => With(new(0, LevelDose.Distance(3)), ResponseTrial.Single(0, 0, 0, true, 3)));
        Assert.Throws<ArgumentException>(() => With(new(0, LevelDose.Hold(3)), ResponseTrial.Single(0, 0, 0, true, -1)));
        Assert.Throws<ArgumentException>(() => With(new(0, LevelDose.Hold(3)), new(0, 0, 0, 1, 2, 3)));
    }

    private static Estimate Slope(ResponseFit fit) => fit.Coefficients.Single(c => c.Kind == CoefficientKind.DoseSlope).Value;

    /// <summary>Forty pupils, three tries at each of two holds, all timed to a tenth; times by the model's own curve, but for false starts.</summary>
    private static ResponseData Simulated(double slope, double falseStarts, int seed)
    {
        var random = new Random(seed);
        var trials = new List<ResponseTrial>();
        for (var i = 0; i < 40; i++)
        {
            var ability = 1.1 * MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
            for (var k = 0; k < 6; k++)
            {
                var doseS = k % 2 == 0 ? 6 : 12;
                // The hold at which the chance of lasting longer is 1 − u.
                var u = random.NextDouble();
                var held = 5 * Math.Exp((ability + Math.Log((1 - u) / u)) / slope);
                var isFailed = held < doseS;
                if (isFailed && (held < 1 || random.NextDouble() < falseStarts)) held = 0.5;
                trials.Add(ResponseTrial.Single(i, k % 2, 0, !isFailed, isFailed ? Math.Round(held, 1) : null));
            }
        }
        return new(Tables.Pupils(40), [new(0, LevelDose.Hold(6)), new(0, LevelDose.Hold(12))], trials);
    }
}
