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
    Guid TaskId, int CueNumber, string Text, int UntickedSetCount, int CheckedSetCount, int UntickedPupilCount, IReadOnlyList<Guid> EntryIds);
