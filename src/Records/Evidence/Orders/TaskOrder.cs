using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Evidence.Chances;

namespace Slantwise.Records.Evidence.Orders;

/// <summary>How a class's entries stand to the order of a task's levels. The order is the teacher's guess about most pupils; it need not hold for everybody.</summary>
/// <param name="TaskNumber">The task in the evidence, from 1.</param>
/// <param name="Whole">How well the order foretells who managed what.</param>
/// <param name="Pairs">Each level beside the next.</param>
public sealed record TaskOrder(int TaskNumber, GuttmanOrder Whole, IReadOnlyList<OrderedPair> Pairs)
{
    /// <summary>Tries a pupil needs at a level before it counts as managed or not. A working rule, no source.</summary>
    public const int LeastTrialCount = 3;

    /// <summary>The orders of all tasks with two levels or more on their sheets.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="tasks">Its tasks.</param>
    /// <param name="chances">What the model says of the same lessons; none to count only.</param>
    public static IReadOnlyList<TaskOrder> Of(IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks, ClassChances? chances) =>
        [.. tasks.Select(task => OfTask(pupils, task, chances)).OfType<TaskOrder>()];

    private static TaskOrder? OfTask(IReadOnlyList<PupilEvidence> pupils, TaskEvidence task, ClassChances? chances)
    {
        var levels = task.Levels.Where(l => l is { LevelId: not null, LevelNumber: not null }).ToList();
        if (levels.Count < 2) return null;
        var tried = pupils.Select(p => p.Tasks.FirstOrDefault(t => t.TaskId == task.TaskId)?.Levels ?? []).ToList();
        var answers = tried.Select(own => (IReadOnlyList<bool?>)[.. levels.Select(l => IsManaged(own.FirstOrDefault(o => o.LevelId == l.LevelId)?.Success))]).ToList();
        var whole = GuttmanOrder.Of(answers, levels.Count);
        return new(task.TaskNumber, whole, [.. whole.Neighbours.Select(pair =>
        {
            var (easier, harder) = (levels[pair.Easier], levels[pair.Harder]);
            var both = Enumerable.Range(0, pupils.Count).Where(p => answers[p][pair.Easier] is not null && answers[p][pair.Harder] is not null).ToList();
            return new OrderedPair(
                easier.LevelNumber!.Value, harder.LevelNumber!.Value, pair, both.Count(p => answers[p][pair.Harder] == true),
                chances?.Contrast(harder.LevelId!.Value, easier.LevelId!.Value),
                [.. both.SelectMany(p => tried[p].Where(l => l.LevelId == easier.LevelId || l.LevelId == harder.LevelId).SelectMany(l => l.Success.EntryIds))]);
        })]);
    }

    // Half of the tries or more: what comes off that often is no accident, and asking for more would leave nobody to compare.
    private static bool? IsManaged(SuccessShare? success) =>
        success is { TrialCount: >= LeastTrialCount } share ? 2 * share.SuccessCount >= share.TrialCount : null;
}
