using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Which slots of the log a cell of a pupil's sheet fills.</summary>
/// <param name="PupilId">The pupil whose sheet it is.</param>
/// <param name="Sheet">The frozen sheet.</param>
public sealed record SheetSlots(Guid PupilId, SheetContent Sheet)
{
    /// <summary>Whether the pupil was there.</summary>
    public EntrySlot Presence => new(nameof(Records.Entries.Presence), PupilId, null, null, null, null);

    /// <summary>The task a cell belongs to.</summary>
    public SheetTask TaskOf(GridCell cell) => Sheet.Tasks[cell.TaskNumber - 1];

    /// <summary>The level chosen for the cell's set.</summary>
    public EntrySlot Choice(GridCell cell) => Of(cell, nameof(Records.Entries.Choice));

    /// <summary>The prediction of the cell's set.</summary>
    public EntrySlot Prediction(GridCell cell) => Of(cell, nameof(Records.Entries.Prediction));

    /// <summary>The decision after the cell's set.</summary>
    public EntrySlot Decision(GridCell cell) => Of(cell, nameof(Records.Entries.Decision));

    /// <summary>A trial of the cell's set.</summary>
    public EntrySlot Trial(GridCell cell, int trialNumber) =>
        Of(cell, nameof(Records.Entries.Trial)) with { TrialNumber = trialNumber };

    /// <summary>A cue of the cell's set.</summary>
    public EntrySlot Cue(GridCell cell, int cueNumber) =>
        Of(cell, nameof(CueTick)) with { CueNumber = cueNumber };

    /// <summary>The slots of every cue of the cell's set, in the order of the sheet.</summary>
    public IEnumerable<EntrySlot> Cues(GridCell cell) =>
        Enumerable.Range(1, TaskOf(cell).Cues.Count).Select(cue => Cue(cell, cue));

    private EntrySlot Of(GridCell cell, string kind) => new(kind, PupilId, TaskOf(cell).TaskId, cell.SetNumber, null, null);
}
