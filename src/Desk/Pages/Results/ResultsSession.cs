using System.Globalization;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Results;

/// <summary>A teacher typing a lesson's sheets in: every grid, the log behind them, and the way into the store.</summary>
public sealed class ResultsSession
{
    /// <summary>The device that entries from the desk carry.</summary>
    public const string DeviceId = "desk";

    private readonly IStore _store;
    private readonly TimeProvider _clock;
    private readonly CultureInfo _language;
    private readonly Dictionary<Guid, ResultsGrid> _grids = [];
    private readonly HashSet<int> _timedTasks = [];
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);
    private List<Entry> _log = [];
    private ILookup<Guid?, Entry> _current = Array.Empty<Entry>().ToLookup(e => e.PupilId);

    /// <summary>A session over a lesson that has a frozen sheet.</summary>
    /// <param name="store">Where entries go.</param>
    /// <param name="record">The lesson; its sheet must be there.</param>
    /// <param name="clock">Dates the entries.</param>
    /// <param name="language">The page's language.</param>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet.</exception>
    public ResultsSession(IStore store, LessonRecord record, TimeProvider clock, CultureInfo language)
    {
        (_store, Record, _clock, _language) = (store, record, clock, language);
        Sheet = record.Sheet?.Content ?? throw new ArgumentException("Results are typed into a frozen sheet: print or open one first.", nameof(record));
        if (Sheet.Predicts == PredictionKind.HoldS) _timedTasks.UnionWith(Enumerable.Range(1, Sheet.Tasks.Count).Where(HasHold));
        Show([.. record.Entries]);
    }

    /// <summary>The lesson, with every entry known so far.</summary>
    public LessonRecord Record { get; private set; }

    /// <summary>The frozen sheet.</summary>
    public SheetContent Sheet { get; }

    /// <summary>How many sheets have been taken in hand.</summary>
    public int TypedInCount => Record.Pupils.Count(pupil => ProgressOf(pupil).IsTypedIn);

    /// <summary>What holds now about a pupil.</summary>
    public IEnumerable<Entry> CurrentOf(Pupil pupil) => _current[pupil.Id];

    /// <summary>How far a pupil's sheet has been typed.</summary>
    public SheetProgress ProgressOf(Pupil pupil) => SheetProgress.Of(Sheet, CurrentOf(pupil));

    /// <summary>The grid of a pupil; the same one each time, so that undo survives turning the page.</summary>
    public ResultsGrid GridOf(Pupil pupil)
    {
        if (_grids.TryGetValue(pupil.Id, out var grid)) return grid;
        // Levels go by the numbers on the pupil's own paper, which count what is offered without a gap.
        var restrictions = Record.Restrictions.Where(r => r.PupilId == pupil.Id).ToList();
        grid = new(Offer.InOwnOrder(Sheet, Record.School.Policy, restrictions, Record.Lesson.Date), pupil, _language);
        foreach (var task in _timedTasks) grid.SetTimed(task, true);
        grid.Take(CurrentOf(pupil));
        return _grids[pupil.Id] = grid;
    }

    /// <summary>Whether a task's trials are typed as seconds; so from the start where the sheet asks for a hold to be predicted.</summary>
    public bool IsTimed(int taskNumber) => _timedTasks.Contains(taskNumber);

    /// <summary>Switches a task's trials between marks and seconds, for every pupil.</summary>
    public void SetTimed(int taskNumber, bool isTimed)
    {
        if (isTimed) _timedTasks.Add(taskNumber);
        else _timedTasks.Remove(taskNumber);
        foreach (var grid in _grids.Values) grid.SetTimed(taskNumber, isTimed);
    }

    /// <summary>Writes texts into a pupil's cells and appends what they say. If the store fails, they stay in their cells as unsaved.</summary>
    /// <param name="pupil">The pupil.</param>
    /// <param name="texts">In the order they were typed; empty to try again what could not be stored.</param>
    public Task WriteAsync(Pupil pupil, IReadOnlyList<(GridCell Cell, string Text)> texts)
    {
        var grid = GridOf(pupil);
        var again = grid.Unsaved
            .Where(u => u.Remark.Key == ResultsGrid.NotSaved && texts.All(t => t.Cell != u.Cell))
            .Select(u => (u.Cell, Text: grid.TextOf(u.Cell)));
        List<(GridCell Cell, string Text)> all = [.. again, .. texts];
        return AppendAsync(grid, all, recorder => [.. all.SelectMany(t => grid.Write(t.Cell, t.Text, recorder).Entries)]);
    }

    /// <summary>Puts a pupil down as absent, or takes that back.</summary>
    public Task SetAbsentAsync(Pupil pupil, bool isAbsent) =>
        AppendAsync(GridOf(pupil), [], recorder => GridOf(pupil).SetAbsent(isAbsent, recorder).Entries);

    /// <summary>Undoes the last thing typed for a pupil.</summary>
    /// <returns>The cell it was in; none where nothing in a cell was undone.</returns>
    public async Task<GridCell?> UndoAsync(Pupil pupil)
    {
        GridCell? cell = null;
        await AppendAsync(GridOf(pupil), [], recorder =>
        {
            var write = GridOf(pupil).Undo(recorder);
            cell = write.Cell;
            return write.Entries;
        });
        return cell;
    }

    private async Task AppendAsync(
        ResultsGrid grid, IReadOnlyList<(GridCell Cell, string Text)> texts, Func<Recorder, IReadOnlyList<Entry>> write)
    {
        await _oneAtATime.WaitAsync();
        var history = grid.History;
        var isStored = false;
        try
        {
            // Another teacher may be typing the same lesson: what they appended comes first.
            Show([.. await _store.ListEntriesAsync(Record.School.Id, Record.Lesson.Id)]);
            var entries = Complete(write(RecorderOver(_log)));
            if (entries.Count > 0) await _store.AppendEntriesAsync(Record.School.Id, entries);
            Show([.. _log, .. entries]);
            isStored = true;
        }
        finally
        {
            if (!isStored) grid.KeepUnsaved(texts, CurrentOf(grid.Pupil), history);
            _oneAtATime.Release();
        }
    }

    // Two devices may have answered one question at once. Taking back the later answer would bring the earlier one up again.
    private List<Entry> Complete(IReadOnlyList<Entry> entries)
    {
        List<Entry> all = [.. entries];
        var takenBack = entries.Where(e => e.Fact is Withdrawal).Select(e => e.SupersedesId).ToHashSet();
        var emptied = _log.Where(e => takenBack.Contains(e.Id)).Select(EntrySlot.Of)
            .Except(entries.Select(EntrySlot.Of)).ToHashSet();
        while (emptied.Count > 0)
        {
            List<Entry> log = [.. _log, .. all];
            var risen = EntryLog.Current(log).Where(e => emptied.Contains(EntrySlot.Of(e))).ToList();
            if (risen.Count == 0) break;
            var recorder = RecorderOver(log);
            all.AddRange(risen.Select(e => recorder.TakeBack(EntrySlot.Of(e))).OfType<Entry>());
        }
        return all;
    }

    private bool HasHold(int taskNumber) => Sheet.Tasks[taskNumber - 1].Levels.Any(level => level.Dose.Kind == DoseKind.HoldS);

    private Recorder RecorderOver(IReadOnlyList<Entry> log) =>
        new(Record.School.Id, Record.Lesson.Id, EntrySource.Desk, DeviceId, _clock, log);

    private void Show(List<Entry> log)
    {
        _log = log;
        Record = Record with { Entries = log };
        _current = EntryLog.Current(log).ToLookup(e => e.PupilId);
        foreach (var grid in _grids.Values) grid.Take(CurrentOf(grid.Pupil));
    }
}
