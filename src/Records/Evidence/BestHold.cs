namespace Slantwise.Records.Evidence;

/// <summary>A pupil's longest hold of a task, compared with nobody else's.</summary>
/// <param name="HeldS">How long.</param>
/// <param name="IsLowerBound">Not timed: the dose was reached, so it was at least this long.</param>
/// <param name="LessonId">In which lesson.</param>
/// <param name="SetNumber">In which set, from 1.</param>
/// <param name="LevelNumber">At which level; none where none was written.</param>
/// <param name="EntryId">The trial's entry.</param>
public sealed record BestHold(double HeldS, bool IsLowerBound, Guid LessonId, int SetNumber, int? LevelNumber, Guid EntryId)
{
    internal static BestHold? Of(IEnumerable<SetEvidence> sets)
    {
        BestHold? best = null;
        foreach (var set in sets)
        {
            if (set.Best is not { } now) continue;
            if (best is null || now.HeldS > best.HeldS || (now.HeldS == best.HeldS && best.IsLowerBound && !now.IsLowerBound))
                best = new BestHold(now.HeldS, now.IsLowerBound, set.LessonId, set.SetNumber, set.LevelNumber, set.Trials[now.Index].EntryId);
        }
        return best;
    }
}
