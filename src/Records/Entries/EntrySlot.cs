namespace Slantwise.Records.Entries;

/// <summary>The one question an entry answers: two entries in one slot cannot both hold.</summary>
/// <param name="Kind">The kind of fact, by its type's name.</param>
/// <param name="PupilId">The pupil asked about.</param>
/// <param name="TaskId">The task asked about.</param>
/// <param name="SetNumber">The set, from 1.</param>
/// <param name="TrialNumber">The trial, from 1.</param>
/// <param name="CueNumber">The cue, from 1.</param>
public readonly record struct EntrySlot(
    string Kind, Guid? PupilId, Guid? TaskId, int? SetNumber, int? TrialNumber, int? CueNumber)
{
    /// <summary>The slot an entry fills.</summary>
    /// <param name="entry">Any entry.</param>
    public static EntrySlot Of(Entry entry) => new(
        entry.Fact.GetType().Name,
        entry.PupilId,
        entry.TaskId,
        entry.SetNumber,
        entry.TrialNumber,
        entry.Fact switch { CueTick tick => tick.CueNumber, TeacherCheck check => check.CueNumber, _ => null });
}
