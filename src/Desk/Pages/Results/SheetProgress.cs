using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>How much of a pupil's sheet has been recorded.</summary>
/// <param name="CompleteSetCount">Sets with a level and every trial.</param>
/// <param name="StartedSetCount">Sets with anything, the complete ones included.</param>
/// <param name="SetCount">Sets on the sheet, over all tasks.</param>
/// <param name="IsAbsent">Whether the pupil is down as absent.</param>
public sealed record SheetProgress(int CompleteSetCount, int StartedSetCount, int SetCount, bool IsAbsent)
{
    /// <summary>Whether the sheet has been taken in hand: something is recorded, or the pupil was absent.</summary>
    public bool IsTypedIn => IsAbsent || StartedSetCount > 0;

    /// <summary>Whether nothing is left to type.</summary>
    public bool IsComplete => SetCount > 0 && CompleteSetCount == SetCount;

    /// <summary>The progress of one pupil.</summary>
    /// <param name="sheet">The frozen sheet.</param>
    /// <param name="current">What holds now about this pupil.</param>
    public static SheetProgress Of(SheetContent sheet, IEnumerable<Entry> current)
    {
        var facts = current.ToList();
        // The decision after a last set and the cues may rightly stay open on paper: they do not make a set incomplete.
        var sets = facts
            .Where(e => e is { TaskId: not null, SetNumber: not null } && e.Fact is not (TeacherCheck or Visit))
            .GroupBy(e => (e.TaskId, e.SetNumber))
            .Where(set => set.Key.SetNumber <= sheet.SetCount && sheet.Tasks.Any(task => task.TaskId == set.Key.TaskId))
            .ToList();
        return new(
            sets.Count(set => set.Any(e => e.Fact is Choice) && set.Count(e => e.Fact is Trial) >= sheet.TrialCount),
            sets.Count,
            sheet.Tasks.Count * sheet.SetCount,
            facts.Exists(e => e.Fact is Presence { IsPresent: false }));
    }
}
