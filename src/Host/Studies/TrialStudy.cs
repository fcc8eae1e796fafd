using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>Trials, levels and first predictions from plain tables, as the response model takes them, with the names they have there.</summary>
/// <param name="Data">What the model is fitted to.</param>
/// <param name="Pupils">Names of pupils, by index.</param>
/// <param name="Levels">Levels as described, by index.</param>
/// <param name="FirstLesson">The number of the first lesson in the tables; the model counts from it.</param>
internal sealed record TrialStudy(ResponseData Data, IReadOnlyList<string> Pupils, IReadOnlyList<LevelDraft> Levels, int FirstLesson)
{
    private const int MostLessons = 10_000, MostTrials = 1_000_000;

    private static readonly StudyColumn[] LevelColumns = [StudyColumn.Level, StudyColumn.Task, StudyColumn.Dose, StudyColumn.Measure, StudyColumn.Order, StudyColumn.OrderLogits];
    private static readonly StudyColumn[] TrialColumns = [.. LevelColumns, StudyColumn.Pupil, StudyColumn.Lesson, StudyColumn.Success, StudyColumn.Trials, StudyColumn.HeldS];
    private static readonly StudyColumn[] PredictionColumns = [StudyColumn.Pupil, StudyColumn.Level, StudyColumn.Predicted];

    /// <summary>What was passed over.</summary>
    public IReadOnlyList<Finding> Notes { get; private init; } = [];

    /// <summary>Reads the tables.</summary>
    /// <param name="trialFile">Pupil, level, success; and more.</param>
    /// <param name="levelFile">Levels and what is known of them; none to take that from the trials.</param>
    /// <param name="predictionFile">Each pupil's prediction before the first trial; none without.</param>
    /// <param name="covariates">Headings of further covariates of levels.</param>
    /// <param name="cancel">Ends the reading.</param>
    public static async Task<TrialStudy> ReadAsync(
        string trialFile, string? levelFile, string? predictionFile, IReadOnlyList<string> covariates, CancellationToken cancel)
    {
        var levels = new LevelRows(covariates);
        var trials = await StudyTable.ReadAsync(trialFile, TrialColumns, cancel);
        var listed = levelFile is null ? null : await StudyTable.ReadAsync(levelFile, LevelColumns, cancel);
        foreach (var named in covariates)
            if (trials.PlaceOf(named) is null && listed?.PlaceOf(named) is null) trials.Fault("CovariateMissing", named);
        if (listed is not null) ReadLevels(listed, levels);
        var (pupils, read) = ReadTrials(trials, levels, listed?.Name);
        var first = read.Count == 0 ? 0 : read.Min(t => t.Lesson);
        var known = levels.Levels(listed ?? trials);
        var predictions = predictionFile is null ? null : await StudyTable.ReadAsync(predictionFile, PredictionColumns, cancel);
        var said = predictions is null ? [] : ReadPredictions(predictions, pupils, levels);
        var data = new ResponseData(
            [.. pupils.Select((_, i) => new ResponsePupil(said.TryGetValue(i, out var made) ? made : null))],
            known,
            [.. read.Select(t => t with { Lesson = t.Lesson - first })]);
        var notes = new[] { trials, listed, predictions }.OfType<StudyTable>().SelectMany(t => t.Notes(covariates));
        return new(data, pupils, levels.Drafts, first) { Notes = [.. notes] };
    }

    private static void ReadLevels(StudyTable table, LevelRows levels)
    {
        table.Need(StudyColumn.Level);
        foreach (var row in table.Rows)
        {
            if (table.Named(row, StudyColumn.Level) is not { } name) continue;
            if (levels.Find(name) is not null) table.Fault("LevelTwice", table.At(row, StudyColumn.Level), name);
            else levels.Describe(table, row, levels.Drafts[levels.Place(name)]);
        }
        table.ThrowIfWrong();
    }

    private static (List<string> Pupils, List<ResponseTrial> Trials) ReadTrials(StudyTable table, LevelRows levels, string? levelFile)
    {
        table.Need(StudyColumn.Pupil, StudyColumn.Level, StudyColumn.Success);
        var (pupils, index, read) = (new List<string>(), new Dictionary<string, int>(), new List<ResponseTrial>());
        var timed = new List<(CsvRow Row, int Level)>();
        foreach (var row in table.Rows)
        {
            var (pupil, name) = (table.Named(row, StudyColumn.Pupil), table.Named(row, StudyColumn.Level));
            if (name is not null && levelFile is not null && levels.Find(name) is null)
            {
                table.Fault("LevelNotListed", table.At(row, StudyColumn.Level), name, levelFile);
                name = null;
            }
            if (name is not null) levels.Describe(table, row, levels.Drafts[levels.Place(name)]);
            var trial = ReadTrial(table, row);
            if (pupil is null || name is null || trial is not { } done) continue;
            if (index.TryAdd(pupil, pupils.Count)) pupils.Add(pupil);
            if (done.HeldS is not null) timed.Add((row, levels.Place(name)));
            read.Add(done with { Pupil = index[pupil], Level = levels.Place(name) });
        }
        foreach (var (row, level) in timed)
            if (levels.Drafts[level] is not { Amount: not null, Measure: DoseMeasure.Hold }) table.Fault("TimeWithoutHold", table.At(row, StudyColumn.HeldS), levels.Drafts[level].Name);
        table.ThrowIfWrong();
        return (pupils, read);
    }

    /// <summary>The trial of a row, its pupil and level still open; none where something is wrong, which is then said.</summary>
    private static ResponseTrial? ReadTrial(StudyTable table, CsvRow row)
    {
        var lesson = !table.Has(StudyColumn.Lesson) ? 0 : table.Count(row, StudyColumn.Lesson, 0, MostLessons);
        var trials = !table.Has(StudyColumn.Trials) ? 1 : table.Count(row, StudyColumn.Trials, 1, MostTrials);
        var success = trials == 1 ? table.Tick(row, StudyColumn.Success) is { } done ? done ? 1 : 0 : null
            : trials is { } most ? table.Count(row, StudyColumn.Success, 0, most) : null;
        if (table[row, StudyColumn.HeldS].Length == 0)
            return lesson is { } when && trials is { } n && success is { } s ? new ResponseTrial(0, 0, when, s, n) : null;
        var held = table.Number(row, StudyColumn.HeldS, h => h >= 0, StudyWords.Say("AllowedNotBelowZero"));
        if (trials > 1) table.Fault("TimeOfSeveral", table.At(row, StudyColumn.HeldS));
        return lesson is { } at && trials == 1 && success is { } tick && held is { } seconds ? new ResponseTrial(0, 0, at, tick, 1, seconds) : null;
    }

    private static Dictionary<int, FirstPrediction> ReadPredictions(StudyTable table, List<string> pupils, LevelRows levels)
    {
        table.Need(PredictionColumns);
        var read = new Dictionary<int, FirstPrediction>();
        foreach (var row in table.Rows)
        {
            var (pupil, name) = (table.Named(row, StudyColumn.Pupil), table.Named(row, StudyColumn.Level));
            var chance = table.Number(row, StudyColumn.Predicted, p => p is >= 0 and <= 1, StudyWords.Say("AllowedFraction"));
            if (pupil is null || name is null || chance is not { } said) continue;
            var place = pupils.IndexOf(pupil);
            if (place < 0) table.Fault("PupilWithoutTrial", table.At(row, StudyColumn.Pupil), pupil);
            else if (levels.Find(name) is not { } level) table.Fault("LevelWithoutTrial", table.At(row, StudyColumn.Level), name);
            else if (!read.TryAdd(place, new(level, said))) table.Fault("PredictionTwice", table.At(row, StudyColumn.Pupil), pupil);
        }
        table.ThrowIfWrong();
        return read;
    }
}
