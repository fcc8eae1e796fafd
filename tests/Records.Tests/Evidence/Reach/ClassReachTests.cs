using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tests.Evidence.Chances;
using Slantwise.Records.Tests.Simulation;

namespace Slantwise.Records.Tests.Evidence.Reach;

public sealed class ClassReachTests
{
    private static readonly SimulationPlan Plan = SimulationPlans.Unit(lessons: 3);

    [Fact]
    public void Of_ANewClass_EveryPupilIsSeenAndNothingRestsOnTrials()
    {
        var reach = Of(Plan.Lessons[0].Content, withLessons: false);
        Assert.Equal(Plan.Lessons[0].Content.Tasks.Select(t => t.TaskId), reach.Select(r => r.TaskId));
        Assert.All(reach, task =>
        {
            Assert.Equal(Plan.Pupils.Count, task.Pupils.Count);
            Assert.Equal(0, task.TrialCount);
            Assert.All(task.Pupils.Where(p => p.Reach.AllowedCount > 0), p => Assert.InRange(p.Reach.IncludedFraction, .01, .999));
        });
    }

    [Fact]
    public void Of_AClassWithLessons_RestsOnThemAndKnowsMore()
    {
        var (before, after) = (Of(Plan.Lessons[0].Content, withLessons: false), Of(Plan.Lessons[0].Content, withLessons: true));
        Assert.All(after, task => Assert.True(task.TrialCount > 500));
        double Doubt(IReadOnlyList<TaskReach> reach) => reach[0].Pupils.SelectMany(p => p.Levels).OfType<LevelOutlook>().Average(l => l.SdLogits);
        Assert.True(Doubt(after) < .8 * Doubt(before), $"{Doubt(after)} against {Doubt(before)}");
    }

    [Fact]
    public void Of_ASheetWithItsHardestLevelOnly_LeavesPupilsOutAndFindsALevelForThem()
    {
        var content = Plan.Lessons[0].Content;
        var task = content.Tasks[0];
        var kept = new MovementTask { SchoolId = Plan.School.Id, Id = task.TaskId, Name = task.Name, Cues = task.Cues, Levels = task.Levels };
        var hardest = content with { Tasks = [task with { Levels = [task.Levels[^1]] }] };
        var reach = Of(hardest, withLessons: true, kept)[0];
        Assert.NotEmpty(reach.LeftOut);
        Assert.NotEmpty(reach.Addition!.Levels);
        Assert.True(reach.Addition.IncludedCount > reach.Whole.IncludedCount + 1);
    }

    private static IReadOnlyList<TaskReach> Of(SheetContent content, bool withLessons, params MovementTask[] kept)
    {
        var simulated = ClassSimulator.Run(Plan);
        var records = withLessons ? Plan.Lessons.Select((_, i) => ClassChancesTests.RecordOf(simulated, i)).ToList() : [];
        return ClassReach.Of(content, kept, records, Plan.Pupils, Plan.School.Policy, Plan.Restrictions, SimulationPlans.Day.AddDays(40), ReachBand.Usual);
    }
}
