using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Entries.Files;

/// <summary>Takes the fields of one row of a table of entries.</summary>
internal sealed class EntryRowReader(CsvRow row, CsvColumns<EntryColumn> columns, List<Finding> findings)
{
    /// <summary>Whether anything of the row was refused.</summary>
    public bool HasRefused { get; private set; }

    public void Take(IReadOnlyList<Finding> more)
    {
        findings.AddRange(more);
        HasRefused |= more.Any(f => f.IsRefused);
    }

    public Pupil? Pupil(IReadOnlyList<Pupil> pupils)
    {
        var code = row[columns[EntryColumn.Pupil]];
        if (code.Length == 0) return Refuse<Pupil>("FieldMissing", EntryColumn.Pupil);
        return pupils.FirstOrDefault(p => p.Code.Equals(code, StringComparison.OrdinalIgnoreCase))
            ?? Refuse<Pupil>("PupilCodeUnknown", EntryColumn.Pupil, TextCheck.Visible(code));
    }

    public SheetTask? Task(SheetContent sheet)
    {
        var text = row[columns[EntryColumn.Task]];
        if (text.Length == 0) return sheet.Tasks.Count == 1 ? sheet.Tasks[0] : Refuse<SheetTask>("TaskNotNamed", EntryColumn.Task, sheet.Tasks.Count);
        if (TryNumber(text, out var number) && number >= 1 && number <= sheet.Tasks.Count) return sheet.Tasks[number - 1];
        var named = sheet.Tasks.Where(t => Alike.Texts(t.Name, text)).ToList();
        return named.Count == 1 ? named[0] : Refuse<SheetTask>("TaskUnknown", EntryColumn.Task, TextCheck.Visible(text), sheet.Tasks.Count);
    }

    public int? Set(SheetContent sheet)
    {
        var text = row[columns[EntryColumn.Set]];
        if (text.Length > 0 && TryNumber(text, out var number) && number >= 1 && number <= sheet.SetCount) return number;
        Refuse(text.Length == 0 ? "FieldMissing" : "EntrySetUnknown", columns[EntryColumn.Set], TextCheck.Visible(text), sheet.SetCount);
        return null;
    }

    public Level? Level(SheetTask task)
    {
        var text = row[columns[EntryColumn.Level]];
        if (text.Length == 0) return null;
        if (TryNumber(text, out var number) && number >= 1 && number <= task.Levels.Count) return task.Levels[number - 1];
        return Refuse<Level>("LevelNumberUnknown", EntryColumn.Level, TextCheck.Visible(text), task.Levels.Count);
    }

    public void AddPrediction(List<EntryRowFact> facts, SheetContent sheet)
    {
        var text = row[columns[EntryColumn.Prediction]];
        if (text.Length == 0) return;
        var column = columns[EntryColumn.Prediction];
        var isSeconds = TrialMark.TryReadSeconds(text, out var heldS)
            || (sheet.Predicts == PredictionKind.HoldS && TrialMark.TryReadSeconds(text + "s", out heldS));
        if (isSeconds) facts.Add(new(new Prediction(null, heldS), null, column));
        else if (TryNumber(text, out var count)) facts.Add(new(new Prediction(count, null), null, column));
        else Refuse("PredictionUnreadable", column, TextCheck.Visible(text), sheet.TrialCount);
    }

    public void AddTrials(List<EntryRowFact> facts, SheetContent sheet, Level? level)
    {
        if (columns.Has(EntryColumn.Trials))
        {
            var marks = Words(row[columns[EntryColumn.Trials]]);
            for (var i = 0; i < marks.Length; i++) AddTrial(facts, marks[i], i + 1, columns[EntryColumn.Trials], level);
            if (marks.Length > sheet.TrialCount) Refuse("EntryTrialUnknown", columns[EntryColumn.Trials], marks.Length, sheet.TrialCount);
            return;
        }
        for (var number = 1; number <= Limits.TrialCount; number++)
        {
            var column = columns[EntryColumns.OfTrial(number)];
            var mark = row[column];
            if (mark.Length == 0) continue;
            if (number > sheet.TrialCount) Refuse("EntryTrialUnknown", column, number, sheet.TrialCount);
            else AddTrial(facts, mark, number, column, level);
        }
    }

    public void AddCues(List<EntryRowFact> facts, SheetTask task)
    {
        var column = columns[EntryColumn.Cues];
        var words = Words(row[column]);
        if (words.Length == 0) return;
        var ticked = new HashSet<int>();
        var unsaid = new HashSet<int>();
        foreach (var word in words)
        {
            if (word == "-") continue;
            var isUnsaid = word[0] == '?';
            if (!TryNumber(isUnsaid ? word[1..] : word, out var number) || number < 1 || number > task.Cues.Count)
            {
                Refuse("CueUnreadable", column, TextCheck.Visible(word), task.Cues.Count);
                return;
            }
            (isUnsaid ? unsaid : ticked).Add(number);
        }
        if (words.Contains("-") && ticked.Count > 0) Refuse("CueUnreadable", column, "-", task.Cues.Count);
        for (var number = 1; number <= task.Cues.Count; number++)
        {
            if (!unsaid.Contains(number)) facts.Add(new(new CueTick(number, ticked.Contains(number)), null, column));
        }
    }

    public void AddDecision(List<EntryRowFact> facts)
    {
        var text = row[columns[EntryColumn.Decision]];
        var reason = SpreadsheetText.Unguarded(row.Raw(columns[EntryColumn.Reason]));
        if (text.Length == 0)
        {
            if (!string.IsNullOrWhiteSpace(reason)) Refuse("ReasonWithoutDecision", columns[EntryColumn.Reason]);
        }
        else if (DecisionWords.Read(text) is { } next) facts.Add(new(new Decision(next, reason), null, columns[EntryColumn.Decision]));
        else Refuse("FieldNotOneOf", columns[EntryColumn.Decision], TextCheck.Visible(text), DecisionWords.Allowed);
    }

    private void AddTrial(List<EntryRowFact> facts, string text, int number, int? column, Level? level)
    {
        if (!TrialMark.TryRead(text, out var mark)) Refuse("TrialUnreadable", column, TextCheck.Visible(text), number);
        else if (mark.HeldS is { } outside && !FactCheck.IsHold(outside)) Refuse("EntryHeldOutside", column, outside, Limits.HoldS);
        else if (mark is { IsSuccess: { } isSuccess }) facts.Add(new(new Trial(isSuccess, mark.HeldS), number, column));
        else if (mark.HeldS is { } heldS)
        {
            if (level is { Dose: { Kind: DoseKind.HoldS } dose }) facts.Add(new(new Trial(PupilSetCheck.Reached(heldS, dose), heldS), number, column));
            else Refuse(level is null ? "TrialTimedWithoutLevel" : "TrialTimedWithoutHold", column, number);
        }
    }

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static bool TryNumber(string text, out int number) => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number);

    private T? Refuse<T>(string key, EntryColumn column, params object[] arguments)
        where T : class
    {
        Refuse(key, columns[column], arguments);
        return null;
    }

    private void Refuse(string key, int? column, params object[] arguments)
    {
        findings.Add(Finding.Refused(key, [row.At(column), .. arguments]));
        HasRefused = true;
    }
}
