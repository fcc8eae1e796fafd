namespace Slantwise.Records.Evidence;

/// <summary>What the teacher saw of a cue in a set, beside the pupil's tick.</summary>
/// <param name="CueNumber">The cue, from 1.</param>
/// <param name="IsMet">Whether the teacher saw it met.</param>
/// <param name="IsBlind">Whether the teacher looked before seeing the tick.</param>
/// <param name="IsTickedByPupil">The pupil's own tick; none where the pupil checked no cue in the set.</param>
/// <param name="EntryId">The teacher's entry.</param>
public sealed record CheckEvidence(int CueNumber, bool IsMet, bool IsBlind, bool? IsTickedByPupil, Guid EntryId);
