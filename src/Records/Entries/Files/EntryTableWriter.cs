using System.Globalization;
using CsvHelper;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Entries.Files;

/// <summary>Writes what holds now as the table that <see cref="EntryTable"/> reads.</summary>
internal static class EntryTableWriter
{
    private static readonly string[] Headings = ["pupil", "task", "set", "level", "prediction", "trials", "cues", "decision", "reason"];

    public static string Write(LessonRecord record)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord(Headings);
            var current = EntryLog.Current(record.Entries).Where(IsOnSheet).ToLookup(e => (e.PupilId!.Value, e.TaskId!.Value, e.SetNumber!.Value));
            var sheet = record.Sheet?.Content ?? new SheetContent { Title = "" };
            foreach (var pupil in record.Pupils)
            {
                for (var task = 0; task < sheet.Tasks.Count; task++)
                {
                    for (var set = 1; set <= sheet.SetCount; set++)
                    {
                        var entries = current[(pupil.Id, sheet.Tasks[task].TaskId, set)].ToList();
                        if (entries.Count > 0) csv.WriteRecord(Row(pupil.Code, task + 1, set, sheet.Tasks[task], entries));
                    }
                }
            }
        }
        return text.ToString();
    }

    private static bool IsOnSheet(Entry entry) =>
        entry is { PupilId: not null, TaskId: not null, SetNumber: not null, Fact: Choice or Prediction or Trial or CueTick or Decision };

    private static string[] Row(string code, int taskNumber, int setNumber, SheetTask task, List<Entry> entries)
    {
        var choice = entries.Select(e => e.Fact).OfType<Choice>().FirstOrDefault();
        var levelIndex = choice is null ? -1 : task.Levels.ToList().FindIndex(l => l.Id == choice.LevelId);
        var decision = entries.Select(e => e.Fact).OfType<Decision>().FirstOrDefault();
        return
        [
            code,
            Number(taskNumber),
            Number(setNumber),
            levelIndex < 0 ? "" : Number(levelIndex + 1),
            Predicted(entries.Select(e => e.Fact).OfType<Prediction>().FirstOrDefault()),
            Trials(entries, levelIndex < 0 ? null : task.Levels[levelIndex]),
            Cues(entries, task.Cues.Count),
            decision is null ? "" : DecisionWords.Of(decision.Next),
            SpreadsheetText.Guarded(decision?.Reason ?? ""),
        ];
    }

    private static string Predicted(Prediction? prediction) => prediction switch
    {
        { SuccessCount: { } count } => Number(count),
        { HoldS: { } heldS } => TrialMark.Seconds(heldS),
        _ => "",
    };

    private static string Trials(List<Entry> entries, Level? level)
    {
        var trials = entries.Where(e => e is { Fact: Trial, TrialNumber: > 0 }).ToDictionary(e => e.TrialNumber!.Value, e => (Trial)e.Fact);
        if (trials.Count == 0) return "";
        return string.Join(' ', Enumerable.Range(1, trials.Keys.Max()).Select(n => trials.TryGetValue(n, out var trial) ? TrialMark.Of(trial, level) : "-"));
    }

    private static string Cues(List<Entry> entries, int cueCount)
    {
        var ticks = entries.Select(e => e.Fact).OfType<CueTick>().ToDictionary(t => t.CueNumber, t => t.IsTicked);
        if (ticks.Count == 0) return "";
        var words = new List<string>();
        for (var number = 1; number <= cueCount; number++)
        {
            if (!ticks.TryGetValue(number, out var isTicked)) words.Add("?" + Number(number));
            else if (isTicked) words.Add(Number(number));
        }
        return words.Exists(w => w[0] != '?') ? string.Join(' ', words) : string.Join(' ', words.Prepend("-"));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
