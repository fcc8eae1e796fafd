namespace Slantwise.Records.Entries;

/// <summary>What the teacher saw of a cue, beside the pupil's own tick.</summary>
/// <param name="CueNumber">The cue, from 1 in the order of the sheet.</param>
/// <param name="IsMet">Whether the teacher saw it met.</param>
/// <param name="IsBlind">Whether the teacher looked before seeing the pupil's tick.</param>
public sealed record TeacherCheck(int CueNumber, bool IsMet, bool IsBlind) : EntryFact;
