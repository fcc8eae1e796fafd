using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tests.Evidence.Chances;
using Slantwise.Records.Tests.Simulation;

namespace Slantwise.Records.Tests.Evidence.Reach;

public sealed class ReachBasisTests
{
    private static readonly SimulationPlan Plan = SimulationPlans.Unit(lessons: 2);
    private static readonly SheetContent Sheet = Plan.Lessons[0].Content;
    private static readonly IReadOnlyList<MovementTask> Kept =
        [.. Sheet.Tasks.Select(t => new MovementTask { SchoolId = Plan.School.Id, Id = t.TaskId, Name = t.Name, Cues = t.Cues, Levels = t.Levels })];

    private static readonly Lazy<ReachBasis> Basis = new(() => Fit(Sheet));

    [Fact]
    public void Of_FewerLevels_IsWhatAFitOfThatSheetAloneSays()
    {
        var fewer = Sheet with { Tasks = [Sheet.Tasks[0] with { Levels = [.. Sheet.Tasks[0].Levels.Skip(1)] }, .. Sheet.Tasks.Skip(1)] };
        var (kept, alone) = (Reach(Basis.Value, fewer), Reach(Fit(fewer), fewer));
        Assert.Equal(alone.Select(r => r.Whole.IncludedCount), kept.Select(r => r.Whole.IncludedCount));
        Assert.Equal(alone[0].Addition?.Levels, kept[0].Addition?.Levels);
        Assert.NotEqual(Reach(Basis.Value, Sheet)[0].Whole.IncludedCount, kept[0].Whole.IncludedCount);
    }

    [Fact]
    public void Covers_LevelsTakenOffOrMoved_ButNotNewOnesOrOtherDoses()
    {
        var task = Sheet.Tasks[0];
        SheetContent With(IEnumerable<Level> levels) => Sheet with { Tasks = [task with { Levels = [.. levels] }] };
        Assert.True(Basis.Value.Covers(With(task.Levels.Skip(2))));
        Assert.True(Basis.Value.Covers(With(task.Levels.Reverse())));
        Assert.False(Basis.Value.Covers(With(task.Levels.Append(task.Levels[0] with { Id = Guid.NewGuid() }))));
        Assert.False(Basis.Value.Covers(With([task.Levels[0] with { Dose = task.Levels[0].Dose with { Amount = 77 } }])));
        Assert.Throws<ArgumentException>(() => Reach(Basis.Value, With([task.Levels[0] with { Id = Guid.NewGuid() }])));
    }

    private static ReachBasis Fit(SheetContent sheet)
    {
        var simulated = ClassSimulator.Run(Plan);
        return ReachBasis.Of(sheet, Kept, [.. Plan.Lessons.Select((_, i) => ClassChancesTests.RecordOf(simulated, i))], Plan.Pupils);
    }

    private static IReadOnlyList<TaskReach> Reach(ReachBasis basis, SheetContent sheet) =>
        basis.Of(sheet, Plan.School.Policy, Plan.Restrictions, SimulationPlans.Day.AddDays(40), ReachBand.Usual);
}
