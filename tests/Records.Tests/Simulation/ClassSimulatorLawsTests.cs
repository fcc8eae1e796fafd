using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>Large simulated samples against the model that docs/simulator.md states, written here a second time.</summary>
public sealed class ClassSimulatorLawsTests
{
    [Fact]
    public void Run_ManyPupils_SuccessShareOfEachLevelIsTheModels()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit(seed: 41, pupils: 800) with { Mess = PaperMess.None });
        var pupils = simulated.Truth.Pupils.ToDictionary(p => p.PupilId);
        var levels = simulated.Truth.Levels.ToDictionary(l => l.Level.Id);
        var lessons = simulated.Plan.Lessons.Select((l, i) => (l.Lesson.Id, i)).ToDictionary(l => l.Id, l => l.i);
        var sums = levels.Keys.ToDictionary(id => id, _ => (Trials: 0, Successes: 0.0, Expected: 0.0, Variance: 0.0));
        foreach (var sheet in simulated.Entries.GroupBy(e => (e.PupilId, e.LessonId)))
        {
            var trialsBefore = 0;
            LevelTruth? level = null;
            foreach (var entry in sheet)
            {
                if (entry.Fact is Choice choice) level = levels[choice.LevelId];
                if (entry.Fact is not Trial trial) continue;
                var pupil = pupils[sheet.Key.PupilId!.Value];
                var logits = pupil.AbilityLogits[level!.Family] + (pupil.LearningLogits * lessons[sheet.Key.LessonId])
                    - (pupil.FatigueLogits * trialsBefore++) - level.DifficultyLogits;
                var chance = 1 / (1 + Math.Exp(-logits));
                var sum = sums[level.Level.Id];
                sums[level.Level.Id] = (sum.Trials + 1, sum.Successes + (trial.IsSuccess ? 1 : 0), sum.Expected + chance, sum.Variance + (chance * (1 - chance)));
            }
        }
        // 29 levels are tried, one never is: |z| stays below 4 in all but 1 of 500 such studies, and the seed is fixed.
        Assert.Single(sums.Values, s => s.Trials == 0);
        Assert.All(sums.Values.Where(s => s.Trials > 0), s => Assert.InRange((s.Successes - s.Expected) / Math.Sqrt(s.Variance), -4, 4));
        var chiSquare = sums.Values.Where(s => s.Trials > 0).Sum(s => Math.Pow(s.Successes - s.Expected, 2) / s.Variance);
        Assert.InRange(chiSquare, 9.3, 62.0); // 0.01 % and 99.97 % points, about, of 29 degrees of freedom.
    }

    [Theory]
    [InlineData(1.4)]
    [InlineData(0.9)]
    public void Run_ManyHolds_QuartilesAreTheLogLogisticModels(double slopeLogits)
    {
        // Everybody alike at ability 0, so that the holds are one sample; a dose of a minute stops few of them.
        var level = SimulationPlans.Hold(1, 60);
        var plan = SimulationPlans.OneTask(5, 3000, 1, 10, PredictionKind.Nothing, level);
        plan = plan with
        {
            HoldSlopeLogits = slopeLogits,
            Population = plan.Population with { AbilitySdLogits = 0 },
            LevelBents = new Dictionary<Guid, LevelBent> { [level.Id] = new() { DifficultyLogits = 2.5 } },
        };
        var simulated = ClassSimulator.Run(plan);
        var holds = simulated.Entries.Select(e => e.Fact).OfType<Trial>().Select(t => t.HeldS!.Value).Order().ToList();
        Assert.Equal(30_000, holds.Count);
        Assert.Equal(60, holds[^1]);

        // Median hold exp((ability − task) / slope) with task = 2.5 − slope · ln 60; quartiles a factor 3^(1/slope) from it.
        var median = Math.Exp((0 - (2.5 - (slopeLogits * Math.Log(60)))) / slopeLogits);
        Assert.Equal(median, Math.Exp((0 - simulated.Truth.Levels[0].OneSecondLogits) / slopeLogits), 1e-9);
        foreach (var (share, hold) in new[] { (0.25, median / Math.Pow(3, 1 / slopeLogits)), (0.5, median), (0.75, median * Math.Pow(3, 1 / slopeLogits)) })
        {
            // The error of a quantile is √(q(1−q)/n) / density; the density of this model is slope · q(1−q) / t. The watch adds half a tenth.
            var density = slopeLogits * share * (1 - share) / hold;
            var tolerance = (4 * Math.Sqrt(share * (1 - share) / holds.Count) / density) + 0.05;
            Assert.Equal(hold, holds[(int)(share * holds.Count)], tolerance);
        }
    }

    [Fact]
    public void Run_TimedHolds_WatchAndCrossNeverDisagree()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.OneTask(
            6, 500, 3, 10, PredictionKind.HoldS, SimulationPlans.Hold(1, 0.1m), SimulationPlans.Hold(2, 2.5m), SimulationPlans.Hold(3, 10)));
        var doses = simulated.Truth.Levels.ToDictionary(l => l.Level.Id, l => (double)l.Level.Dose.Amount);
        foreach (var sheet in simulated.Entries.GroupBy(e => e.PupilId))
        {
            var doseS = 0.0;
            foreach (var fact in sheet.Select(e => e.Fact))
            {
                if (fact is Choice choice) doseS = doses[choice.LevelId];
                if (fact is Prediction prediction) Assert.InRange(prediction.HoldS!.Value, 0.1, Math.Max(doseS, 0.5));
                if (fact is not Trial { HeldS: { } heldS } trial) continue;
                Assert.Equal(trial.IsSuccess, heldS >= doseS);
                Assert.InRange(heldS, 0, doseS);
                Assert.Equal(heldS, Math.Round(heldS, 1));
            }
        }
    }

    [Fact]
    public void Run_SetBias_MeanPredictionErrorHasItsSign()
    {
        var over = MeanErrorCount(0.9);
        var fair = MeanErrorCount(0);
        var under = MeanErrorCount(-0.9);
        Assert.InRange(over, 0.35, 1.5);
        Assert.InRange(fair, -0.25, 0.25);
        Assert.InRange(under, -1.5, -0.35);

        static double MeanErrorCount(double biasLogits)
        {
            var plan = SimulationPlans.Unit(seed: 13, pupils: 600) with { Mess = PaperMess.None };
            plan = plan with { Population = plan.Population with { BiasLogits = biasLogits } };
            return ClassSimulator.Run(plan).Entries
                .Where(e => e.SetNumber is not null)
                .GroupBy(e => (e.PupilId, e.LessonId, e.TaskId, e.SetNumber))
                .Where(set => set.Any(e => e.Fact is Prediction { SuccessCount: not null }))
                .Average(set => set.Select(e => e.Fact).OfType<Prediction>().Single().SuccessCount!.Value
                    - set.Count(e => e.Fact is Trial { IsSuccess: true }));
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.45)]
    [InlineData(0.6)]
    public void Run_SetChangeShare_DecisionsChangeAboutAsOften(double changeFraction)
    {
        var plan = SimulationPlans.Unit(seed: 17, pupils: 600);
        var decisions = ClassSimulator.Run(plan with { Population = plan.Population with { ChangeFraction = changeFraction } })
            .Entries.Select(e => e.Fact).OfType<Decision>().ToList();
        var changed = decisions.Count(d => d.Next != NextLevel.Same) / (double)decisions.Count;
        // "About": who wants a harder level at the hardest one stays, and clear results move more than unclear ones.
        Assert.InRange(changed, changeFraction - 0.07, changeFraction + 0.07);
    }

    [Fact]
    public void Run_Decisions_FollowThePupilsOwnResults()
    {
        var sets = ClassSimulator.Run(SimulationPlans.Unit(seed: 19, pupils: 600) with { Mess = PaperMess.None }).Entries
            .Where(e => e.SetNumber is not null)
            .GroupBy(e => (e.PupilId, e.LessonId, e.TaskId, e.SetNumber))
            .Select(set => (
                Share: set.Count(e => e.Fact is Trial { IsSuccess: true }) / (double)set.Count(e => e.Fact is Trial),
                set.Select(e => e.Fact).OfType<Decision>().Single().Next))
            .ToList();
        Assert.True(ShareOf(NextLevel.Harder, s => s >= 0.8) > 4 * ShareOf(NextLevel.Harder, s => s < 0.4));
        Assert.True(ShareOf(NextLevel.Easier, s => s < 0.4) > 4 * ShareOf(NextLevel.Easier, s => s >= 0.8));

        double ShareOf(NextLevel next, Func<double, bool> having) =>
            sets.Where(s => having(s.Share)).Average(s => s.Next == next ? 1.0 : 0.0);
    }

    [Fact]
    public void Run_DishonestClass_TicksMoreCuesThanAnHonestOne()
    {
        Assert.True(TickedShare(0.1) > TickedShare(0.95) + 0.1);

        static double TickedShare(double honestyFraction)
        {
            var plan = SimulationPlans.Unit(seed: 23, pupils: 300);
            return ClassSimulator.Run(plan with { Population = plan.Population with { HonestyFraction = honestyFraction } })
                .Entries.Select(e => e.Fact).OfType<CueTick>().Average(tick => tick.IsTicked ? 1.0 : 0.0);
        }
    }
}
