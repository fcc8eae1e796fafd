using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Simulation;

namespace Slantwise.Records.Tests.Evidence.Chances;

public sealed class ClassChancesTests
{
    [Fact]
    public void Of_SimulatedClasses_NineRangesInTenHoldTheTruth()
    {
        // Levels are chosen by the simulated pupils themselves. 10 classes × 26 pupils × 5 levels; ranges of one pupil go together, so the
        // share has a standard error of about 2 in 100: four of them around .90.
        var (held, count) = (0, 0);
        for (ulong seed = 1; seed <= 10; seed++)
        {
            var simulated = ClassSimulator.Run(OneTask(seed));
            var chances = ClassChances.Of([RecordOf(simulated)], [], []);
            var levels = simulated.Plan.Lessons[0].Content.Tasks[0].Levels;
            foreach (var pupil in simulated.Plan.Pupils)
            {
                foreach (var (level, chance) in levels.Zip(chances.Chances(pupil.Id, levels, 0)))
                {
                    var truth = 1 / (1 + Math.Exp(-simulated.Truth.SuccessLogits(pupil.Id, level.Id, 0, 0)));
                    var (low, high) = chance!.Range(.90);
                    if (truth >= low && truth <= high) held++;
                    count++;
                }
            }
        }
        Assert.InRange((double)held / count, .82, .98);
    }

    [Fact]
    public void Of_NothingTriedYet_TheTeachersOrderAloneAndItSaysSo()
    {
        var plan = OneTask(3);
        var record = RecordOf(ClassSimulator.Run(plan)) with { Entries = [] };
        var chances = ClassChances.Of([record], [], []);
        Assert.Equal(0, chances.TrialCount);
        var found = chances.Chances(plan.Pupils[0].Id, plan.Lessons[0].Content.Tasks[0].Levels, 0);
        Assert.All(found, c => Assert.True(c!.Logit.Cautions.HasFlag(ResponseCaution.MostlyAssumption)));
        Assert.Equal(found.Select(c => c!.Logit.MeanLogits).OrderDescending(), found.Select(c => c!.Logit.MeanLogits));
    }

    [Fact]
    public void Chance_OfAStrangerOrAnUnknownLevel_IsNone()
    {
        var plan = OneTask(3);
        var chances = ClassChances.Of([RecordOf(ClassSimulator.Run(plan))], [], []);
        Assert.Null(chances.Chance(Guid.CreateVersion7(), plan.Lessons[0].Content.Tasks[0].Levels[0].Id, 0));
        Assert.Null(chances.Chance(plan.Pupils[0].Id, Guid.CreateVersion7(), 0));
        Assert.Equal(0, chances.TrialCountOf(Guid.CreateVersion7()));
    }

    [Fact]
    public void Of_LessonsInAnotherOrder_SameAnswer()
    {
        var plan = SimulationPlans.Unit(lessons: 3);
        var simulated = ClassSimulator.Run(plan);
        var records = plan.Lessons.Select((_, i) => RecordOf(simulated, i)).ToList();
        var (one, other) = (ClassChances.Of(records, [], []), ClassChances.Of([.. records.AsEnumerable().Reverse()], [], []));
        var level = plan.Lessons[0].Content.Tasks[0].Levels[1].Id;
        foreach (var pupil in plan.Pupils) Assert.Equal(one.Chance(pupil.Id, level, 2)!.Logit, other.Chance(pupil.Id, level, 2)!.Logit);
    }

    private static SimulationPlan OneTask(ulong seed) => SimulationPlans.OneTask(
        seed, pupils: 26, sets: 3, trials: 5, PredictionKind.SuccessCount, [.. Enumerable.Range(1, 5).Select(n => SimulationPlans.Hold(n, 5))]);

    internal static LessonRecord RecordOf(SimulatedClass simulated, int lesson = 0)
    {
        var plan = simulated.Plan;
        var planned = plan.Lessons[lesson].Lesson;
        return new LessonRecord
        {
            School = plan.School,
            Class = new() { SchoolId = plan.School.Id, Id = planned.ClassId, Name = "7A" },
            Lesson = planned,
            Sheet = new SheetVersion { SchoolId = plan.School.Id, SheetId = planned.SheetId ?? planned.Id, Version = 1, FrozenAt = default, Content = plan.Lessons[lesson].Content },
            Pupils = plan.Pupils,
            Restrictions = plan.Restrictions,
            Entries = [.. simulated.Entries.Where(e => e.LessonId == planned.Id)],
        };
    }
}
