using Slantwise.Records.Checks;
using Slantwise.Records.Csv;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Entries.Files;

/// <summary>Reads a table of entries row by row. A row is taken whole or not at all.</summary>
internal sealed class EntryTable(string name, LessonRecord record, Recorder recorder)
{
    private readonly EntryLookup _lookup = new(record);
    private readonly List<Finding> _findings = [];
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<(Guid Pupil, Guid Task, int Set), CsvRow> _seen = [];

    public EntryReading Read(string text)
    {
        var table = CsvTable.Read(name, text);
        _findings.AddRange(table.Findings);
        var badLines = table.Findings.Where(f => f.InFile?.LineNumber is not null).Select(f => f.InFile!.LineNumber).Distinct().Count();
        var refusedCount = badLines;
        if (record.Sheet is not { Content: var sheet }) _findings.Add(Finding.Refused("EntryWithoutSheet", table.Place));
        else if (table.Headings.Count > 0 && Columns(table) is { } columns)
        {
            foreach (var row in table.Rows)
            {
                if (!ReadRow(row, columns, sheet)) refusedCount++;
            }
            _findings.AddRange(EntryReadings.Inconsistencies(record, _entries, _lookup));
        }
        return new EntryReading { Entries = _entries, Findings = _findings, RowCount = table.Rows.Count + badLines, RefusedRowCount = refusedCount };
    }

    private CsvColumns<EntryColumn>? Columns(CsvTable table)
    {
        var countBefore = _findings.Count;
        var columns = EntryColumns.Of(table, _findings);
        foreach (var needed in (ReadOnlySpan<EntryColumn>)[EntryColumn.Pupil, EntryColumn.Set])
        {
            if (!columns.Has(needed)) _findings.Add(Finding.Refused("ColumnMissing", table.Place, needed.ToString().ToLowerInvariant()));
        }
        if (columns.Has(EntryColumn.Trials) && Enumerable.Range(1, Limits.TrialCount).Any(n => columns.Has(EntryColumns.OfTrial(n))))
        {
            _findings.Add(Finding.Refused("TrialsWrittenTwice", table.Place));
        }
        var isUsable = _findings.Count == countBefore;
        foreach (var unknown in columns.Unknown.Where(h => h.Length > 0)) _findings.Add(Finding.Flagged("ColumnNotUsed", table.Place, TextCheck.Visible(unknown)));
        return isUsable ? columns : null;
    }

    private bool ReadRow(CsvRow row, CsvColumns<EntryColumn> columns, SheetContent sheet)
    {
        var reader = new EntryRowReader(row, columns, _findings);
        var pupil = reader.Pupil(record.Pupils);
        var task = reader.Task(sheet);
        var set = reader.Set(sheet);
        if (pupil is null || task is null || set is null) return false;
        if (!_seen.TryAdd((pupil.Id, task.TaskId, set.Value), row))
        {
            _findings.Add(Finding.Refused("EntryRowTwice", row.Place, pupil.Code, _seen[(pupil.Id, task.TaskId, set.Value)].LineNumber));
            return false;
        }

        var level = reader.Level(task);
        var facts = new List<EntryRowFact>();
        if (level is not null) facts.Add(new(new Choice(level.Id), null, columns[EntryColumn.Level]));
        reader.AddPrediction(facts, sheet);
        reader.AddTrials(facts, sheet, level ?? HeldLevel(pupil.Id, task, set.Value));
        reader.AddCues(facts, task);
        reader.AddDecision(facts);
        foreach (var fact in facts) reader.Take(_lookup.CheckFact(pupil.Id, task.TaskId, set, fact.TrialNumber, fact.Fact, row.At(fact.Column), isFromFile: true));
        if (reader.HasRefused) return false;
        foreach (var fact in facts)
        {
            if (recorder.Put(pupil.Id, task.TaskId, set, fact.TrialNumber, fact.Fact) is { } entry) _entries.Add(entry);
        }
        return true;
    }

    // A row that adds times to a set entered before is read with the level chosen then.
    private Level? HeldLevel(Guid pupilId, SheetTask task, int setNumber)
    {
        var held = recorder.Holds(new EntrySlot(nameof(Choice), pupilId, task.TaskId, setNumber, null, null)) as Choice;
        return held is null ? null : task.Levels.FirstOrDefault(l => l.Id == held.LevelId);
    }
}
