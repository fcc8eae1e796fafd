using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ResponseModelDriftTests
{
    private static readonly ResponseOptions Given = new() { AbilitySdLogits = 1.1, ResidualSdLogits = 0.6, DriftSdLogits = 0.5, NodeCount = 15, ToleranceSd = 1e-10 };

    [Fact]
    public void Fit_WanderingAbility_PeaksAsThePlainVersion() =>
        // Given where it began the walk is integrated by Laplace's approximation; the plain version's grid integrates it in full. With the usual
        // drift of .2 the gap seen is 3e-4; at .5 it is 5e-3, and 5e-2 in the evidence.
        TinyClasses.Of(false, 3, false).Sample(data => PlainComparison.Check(data, Given with { DriftSdLogits = 0.2 }, 1e-3, 0.03), iter: 4);

    [Fact]
    public void Fit_WanderingTimes_PeaksAsThePlainVersion() =>
        TinyClasses.Of(true, 2, false).Sample(data => PlainComparison.Check(data, Given with { DriftSdLogits = 0.2 }, 1e-3, 0.03), iter: 3);

    [Theory]
    [InlineData(0.2, 0.003)]
    [InlineData(0.5, 0.04)]
    public void Ability_BorderKnown_IsThePlainPosteriorInAnyLesson(double drift, double tolerance)
    {
        // Assumptions so narrow that nothing but abilities is left to find. Lessons 0, 2 and 5 have trials; 1, 3, 4 lie between, 7 ahead.
        var known = Given with
        {
            DriftSdLogits = drift,
            ResidualSdLogits = 1e-4,
            Priors = new() { Middle = new(0.2, 1e-4), DoseSlope = new(1.1, 1e-4), OwnSlopeSdLogits = 0, Growth = new(0.1, 1e-4) },
        };
        var data = new ResponseData(Tables.Pupils(2), [new(0, LevelDose.Hold(4)), new(0, LevelDose.Hold(9))],
        [
            new(0, 0, 0, 2, 3), new(0, 0, 2, 0, 2), new(0, 1, 2, 0, 1), new(0, 1, 5, 3, 3), new(1, 0, 2, 2, 2), new(1, 1, 5, 1, 2),
        ]);
        var (plain, fit) = (new PlainModel(data, known), ResponseModel.Fit(data, known));
        double[] border = [.. fit.Coefficients.Select(c => c.Value.MeanLogits), 0, 0];
        for (var pupil = 0; pupil < 2; pupil++)
        {
            for (var lesson = 0; lesson < 8; lesson++)
            {
                var (mean, sd) = plain.Ability(pupil, lesson, border);
                var found = fit.Ability(pupil, lesson);
                Assert.Equal(mean, found.MeanLogits - lesson * fit.Coefficients.Single(c => c.Kind == CoefficientKind.Growth).Value.MeanLogits, tolerance);
                Assert.Equal(sd, found.SdLogits, tolerance);
            }
        }
    }

    [Fact]
    public void Fit_HardlyAnyDrift_IsTheFitWithout()
    {
        var (still, wandering) = (ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7)),
            ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7) with { DriftSdLogits = 1e-3 }));
        Assert.Equal(still.EvidenceNats!.Value, wandering.EvidenceNats!.Value, 1e-3);
        for (var i = 0; i < 30; i++)
        {
            Assert.Equal(still.Ability(i, 5).MeanLogits, wandering.Ability(i, 5).MeanLogits, 1e-4);
            Assert.Equal(still.Ability(i, 5).SdLogits, wandering.Ability(i, 5).SdLogits, 1e-4);
        }
    }

    [Fact]
    public void Ability_LessonsAhead_IsTheSameButLessCertain()
    {
        // By hand: each lesson ahead adds one step's variance, 0.25, and what growth itself may be.
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7) with { DriftSdLogits = 0.5, HasGrowth = false });
        var (last, ahead) = (fit.Ability(3, 5), fit.Ability(3, 9));
        Assert.Equal(last.MeanLogits, ahead.MeanLogits, 1e-12);
        Assert.Equal(4 * 0.25, ahead.SdLogits * ahead.SdLogits - last.SdLogits * last.SdLogits, 1e-9);
    }

    [Fact]
    public void Ability_OneLessonOnly_MayWanderAfterIt()
    {
        // The trials are those of lesson 0, so the fit takes the shorter way; lessons ahead must still be less certain.
        var fit = ResponseModel.Fit(new(Tables.Pupils(1), Tables.Levels(1), [new(0, 0, 0, 2, 3)]), Given);
        Assert.Equal(3 * 0.25, Math.Pow(fit.Ability(0, 3).SdLogits, 2) - Math.Pow(fit.Ability(0, 0).SdLogits, 2), 1e-9);
    }
}
