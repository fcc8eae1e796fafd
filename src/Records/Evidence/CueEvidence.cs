namespace Slantwise.Records.Evidence;

/// <summary>How often a cue was left open.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="CueNumber">The cue, from 1.</param>
/// <param name="Text">The cue as the sheet says it.</param>
/// <param name="UntickedSetCount">Sets in which cues were checked and this one was not ticked.</param>
/// <param name="CheckedSetCount">Sets in which cues were checked, n.</param>
/// <param name="UntickedPupilCount">Different pupils who left it open at least once.</param>
/// <param name="EntryIds">The tick entries of those checked sets.</param>
public sealed record CueEvidence(
    Guid TaskId, int CueNumber, string Text, int UntickedSetCount, int CheckedSetCount, int UntickedPupilCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>A task's cues in some sets.</summary>
    /// <param name="taskId">The task.</param>
    /// <param name="texts">Its cues as the sheets say them, in their order.</param>
    /// <param name="sets">Any number; a set in which no cue was checked says nothing about them.</param>
    internal static IReadOnlyList<CueEvidence> Of(Guid taskId, IReadOnlyList<string> texts, IReadOnlyList<SetEvidence> sets)
    {
        var seen = sets.Where(s => s.AreCuesChecked).ToList();
        return texts.Select((text, i) =>
        {
            var open = seen.Where(s => s.UntickedCueNumbers.Contains(i + 1)).ToList();
            var known = seen.Count(s => s.TickedCueNumbers.Contains(i + 1)) + open.Count;
            return new CueEvidence(
                taskId, i + 1, text, open.Count, known, open.Select(s => s.PupilId).Distinct().Count(),
                seen.SelectMany(s => s.CueEntryIds).ToList());
        }).ToList();
    }
}
