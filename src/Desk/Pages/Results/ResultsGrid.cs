using System.Collections.Immutable;
using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>One pupil's sheet as a grid: what each cell shows, and the entries that typing into it makes.</summary>
/// <remarks>It never touches a store. Whoever appends its entries says with <see cref="KeepUnsaved"/> when that failed.</remarks>
public sealed class ResultsGrid
{
    /// <summary>The remark on a text that was understood and could not be stored: it is tried again.</summary>
    public const string NotSaved = "NotSaved";

    private readonly CellText _show;
    private readonly CellReader _reader;
    private readonly Dictionary<EntrySlot, EntryFact> _holds = [];
    private readonly Dictionary<GridCell, (string Text, CellRemark Remark)> _unsaved = [];
    private readonly HashSet<int> _timedTasks = [];

    /// <summary>A pupil's empty grid; <see cref="Take"/> fills it.</summary>
    /// <param name="sheet">The frozen sheet of the lesson.</param>
    /// <param name="pupil">The pupil.</param>
    /// <param name="language">The page's language: its letters and its decimal sign.</param>
    public ResultsGrid(SheetContent sheet, Pupil pupil, CultureInfo language)
    {
        (Sheet, Pupil, Letters, Layout) = (sheet, pupil, ResultLetters.For(language), GridLayout.Of(sheet));
        Slots = new(pupil.Id, sheet);
        _show = new(Slots, Letters, language);
        _reader = new(Slots, Letters);
    }

    /// <summary>The sheet.</summary>
    public SheetContent Sheet { get; }

    /// <summary>The pupil.</summary>
    public Pupil Pupil { get; }

    /// <summary>The cells and where keys lead.</summary>
    public GridLayout Layout { get; }

    /// <summary>The letters of the page's language.</summary>
    public ResultLetters Letters { get; }

    /// <summary>Where each cell's facts are in the log.</summary>
    public SheetSlots Slots { get; }

    /// <summary>Whether the pupil is down as absent.</summary>
    public bool IsAbsent => _holds.GetValueOrDefault(Slots.Presence) is Presence { IsPresent: false };

    /// <summary>How many facts about this pupil hold.</summary>
    public int HeldCount => _holds.Count;

    /// <summary>What can be undone, the last thing typed on top.</summary>
    public ImmutableStack<IReadOnlyList<UndoStep>> History { get; private set; } = [];

    /// <summary>The cells whose text could not be taken, in the order of the sheet.</summary>
    public IReadOnlyList<(GridCell Cell, CellRemark Remark)> Unsaved =>
        [.. Layout.Cells.Where(_unsaved.ContainsKey).Select(cell => (cell, _unsaved[cell].Remark))];

    /// <summary>Where typing goes on: the level of the first empty set, or the first cell where no set is empty; none without a task.</summary>
    public GridCell? FirstOpenCell
    {
        get
        {
            var open = Layout.Rows.FirstOrDefault(row => row.Cells.All(cell => TextOf(cell).Length == 0));
            return open?.Cells[0] ?? (Layout.Cells.Count > 0 ? Layout.Cells[0] : null);
        }
    }

    /// <summary>What a cell shows: the text that waits in it, or what the log holds.</summary>
    public string TextOf(GridCell cell) =>
        _unsaved.TryGetValue(cell, out var waiting) ? waiting.Text : _show.Of(cell, _holds, IsTimed(cell.TaskNumber));

    /// <summary>The remark on a cell whose text waits unsaved; none for any other.</summary>
    public CellRemark? RemarkOn(GridCell cell) => _unsaved.TryGetValue(cell, out var waiting) ? waiting.Remark : null;

    /// <summary>How a cell takes keys.</summary>
    public CellTyping TypingOf(GridCell cell) => CellTyping.Of(cell, Sheet, IsTimed(cell.TaskNumber), Letters);

    /// <summary>Whether a bare number in a task's trials is seconds.</summary>
    public bool IsTimed(int taskNumber) => _timedTasks.Contains(taskNumber);

    /// <summary>Switches a task's trials between marks and seconds. What is recorded stays as it is.</summary>
    public void SetTimed(int taskNumber, bool isTimed)
    {
        if (isTimed) _timedTasks.Add(taskNumber);
        else _timedTasks.Remove(taskNumber);
    }

    /// <summary>Shows what a log holds about this pupil.</summary>
    /// <param name="current">What holds now, from <see cref="EntryLog.Current"/>; other pupils' entries are passed over.</param>
    public void Take(IEnumerable<Entry> current)
    {
        _holds.Clear();
        foreach (var entry in current.Where(e => e.PupilId == Pupil.Id && !EntryLog.IsEvent(e.Fact)))
        {
            _holds[EntrySlot.Of(entry)] = entry.Fact;
        }
    }

    /// <summary>Writes a text into a cell.</summary>
    /// <param name="cell">A cell; one the sheet does not have changes nothing.</param>
    /// <param name="text">What was typed; empty takes back what was there.</param>
    /// <param name="recorder">Made from the same log as the grid took last.</param>
    public GridWrite Write(GridCell cell, string text, Recorder recorder)
    {
        if (!Layout.Has(cell)) return new(null, []);
        List<Entry> entries = [];
        List<UndoStep> steps = [];
        // A decision carries its reason: clearing the letter must not lose the words.
        var reason = cell.Kind == CellKind.Decision ? TextOf(cell with { Kind = CellKind.Reason }) : "";
        if (TakeText(cell, text.Trim(), recorder, entries, steps))
        {
            if (cell.Kind == CellKind.Level) Apply(_reader.Judged(cell, _holds), recorder, entries, steps);
            if (reason.Length > 0) TakeText(cell with { Kind = CellKind.Reason }, reason, recorder, entries, steps);
            TakeWaiting(cell, recorder, entries, steps);
        }
        if (steps.Count > 0) History = History.Push(steps);
        return new(cell, entries);
    }

    /// <summary>Puts the pupil down as absent, or takes that back.</summary>
    public GridWrite SetAbsent(bool isAbsent, Recorder recorder)
    {
        List<Entry> entries = [];
        List<UndoStep> steps = [];
        if (isAbsent != IsAbsent) Apply([new(Slots.Presence, isAbsent ? new Presence(false) : null)], recorder, entries, steps);
        if (steps.Count > 0) History = History.Push(steps);
        return new(null, entries);
    }

    /// <summary>Undoes the last thing typed, by corrections: nothing is deleted.</summary>
    /// <returns>No entries where there is nothing to undo, or where somebody has changed it since.</returns>
    public GridWrite Undo(Recorder recorder)
    {
        if (History.IsEmpty) return new(null, []);
        History = History.Pop(out var steps);
        List<Entry> entries = [];
        List<SlotChange> back = [.. steps.Reverse()
            .Where(step => Equals(_holds.GetValueOrDefault(step.Slot), step.After))
            .Select(step => new SlotChange(step.Slot, step.Before))];
        Apply(back, recorder, entries, []);
        var cell = back.Count > 0 ? CellOf(back[^1].Slot) : null;
        if (cell is { } touched) TakeWaiting(touched, recorder, entries, []);
        return new(cell, entries);
    }

    /// <summary>Goes back to what the log holds after entries could not be appended, and keeps their texts in the cells.</summary>
    /// <param name="texts">What had been typed, in order.</param>
    /// <param name="current">What the log holds without them.</param>
    /// <param name="history">What could be undone before.</param>
    public void KeepUnsaved(
        IEnumerable<(GridCell Cell, string Text)> texts, IEnumerable<Entry> current, ImmutableStack<IReadOnlyList<UndoStep>> history)
    {
        Take(current);
        History = history;
        foreach (var (cell, text) in texts.Where(t => Layout.Has(t.Cell))) _unsaved[cell] = (text, new CellRemark(NotSaved, text));
    }

    // A level or a decision may be what other texts of the set were waiting for.
    private void TakeWaiting(GridCell cell, Recorder recorder, List<Entry> entries, List<UndoStep> steps)
    {
        var set = Layout.Rows.Single(row => row.TaskNumber == cell.TaskNumber && row.SetNumber == cell.SetNumber);
        foreach (var waiting in set.Cells.Where(c => c != cell && _unsaved.ContainsKey(c)))
        {
            TakeText(waiting, _unsaved[waiting].Text, recorder, entries, steps);
        }
    }

    private bool TakeText(GridCell cell, string text, Recorder recorder, List<Entry> entries, List<UndoStep> steps)
    {
        var reading = _reader.Read(cell, text, _holds, IsTimed(cell.TaskNumber));
        if (reading.Remark is { } remark)
        {
            _unsaved[cell] = (text, remark);
            return false;
        }
        _unsaved.Remove(cell);
        Apply(reading.Changes, recorder, entries, steps);
        return true;
    }

    private void Apply(IReadOnlyList<SlotChange> changes, Recorder recorder, List<Entry> entries, List<UndoStep> steps)
    {
        foreach (var (slot, fact) in changes)
        {
            var before = _holds.GetValueOrDefault(slot);
            var entry = fact is null
                ? recorder.TakeBack(slot)
                : recorder.Put(slot.PupilId, slot.TaskId, slot.SetNumber, slot.TrialNumber, fact);
            if (entry is null) continue;
            entries.Add(entry);
            steps.Add(new(slot, before, fact));
            if (fact is null) _holds.Remove(slot);
            else _holds[slot] = fact;
        }
    }

    private GridCell? CellOf(EntrySlot slot)
    {
        var kind = slot.Kind switch
        {
            nameof(Choice) => CellKind.Level,
            nameof(Prediction) => CellKind.Prediction,
            nameof(Trial) => CellKind.Trial,
            nameof(CueTick) => CellKind.Cues,
            _ => CellKind.Decision,
        };
        return Layout.Cells.Cast<GridCell?>().FirstOrDefault(cell =>
            Sheet.Tasks[cell!.Value.TaskNumber - 1].TaskId == slot.TaskId
            && cell.Value.SetNumber == slot.SetNumber
            && cell.Value.Kind == kind
            && cell.Value.TrialNumber == (slot.TrialNumber ?? 0));
    }
}
