using System.Globalization;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>What rows say of levels: task, dose and measure, place in the order, further covariates.</summary>
/// <param name="covariates">Headings of further covariates, as named on the command line.</param>
internal sealed class LevelRows(IReadOnlyList<string> covariates)
{
    private const int MostRepetitions = 100_000;

    private static readonly Dictionary<string, DoseMeasure> Measures = new()
    {
        ["hold"] = DoseMeasure.Hold,
        ["repetitions"] = DoseMeasure.Repetitions,
        ["distance"] = DoseMeasure.Distance,
        ["height"] = DoseMeasure.Height,
        ["targetsize"] = DoseMeasure.TargetSize,
    };

    private readonly Dictionary<string, int> _index = [];
    private readonly List<LevelDraft> _drafts = [];

    public IReadOnlyList<LevelDraft> Drafts => _drafts;

    /// <summary>The place of a level; none where it is not listed.</summary>
    public int? Find(string name) => _index.TryGetValue(name, out var at) ? at : null;

    /// <summary>The place of a level, listed now if it was not.</summary>
    public int Place(string name)
    {
        if (_index.TryAdd(name, _drafts.Count)) _drafts.Add(new(name, covariates.Count));
        return _index[name];
    }

    /// <summary>Reads what one row says of a level.</summary>
    public void Describe(StudyTable table, CsvRow row, LevelDraft level)
    {
        level.Task = Text(table, row, level, StudyColumn.Task) ?? level.Task;
        if (Text(table, row, level, StudyColumn.Measure) is { } measure)
        {
            if (Measures.TryGetValue(CsvColumns<StudyColumn>.Folded(measure), out var known)) level.Measure = known;
            else table.Wrong(row, StudyColumn.Measure, "hold, repetitions, distance, height, target_size");
        }
        var isCount = level.Measure == DoseMeasure.Repetitions;
        level.Amount = Number(table, row, level, table.PlaceOf(StudyColumn.Dose), StudyHeadings.Of(StudyColumn.Dose),
            n => n > 0 && (!isCount || (n <= MostRepetitions && Math.Floor(n) == n)), isCount ? StudyWords.Say("AllowedCount", 1, MostRepetitions) : StudyWords.Say("AllowedAboveZero")) ?? level.Amount;
        level.Order = Number(table, row, level, table.PlaceOf(StudyColumn.Order), StudyHeadings.Of(StudyColumn.Order), _ => true, StudyWords.Say("AllowedNumber")) ?? level.Order;
        level.OrderLogits = Number(table, row, level, table.PlaceOf(StudyColumn.OrderLogits), StudyHeadings.Of(StudyColumn.OrderLogits), _ => true, StudyWords.Say("AllowedNumber")) ?? level.OrderLogits;
        for (var m = 0; m < covariates.Count; m++)
            if (table.PlaceOf(covariates[m]) is { } place)
                level.Covariates[m] = Number(table, row, level, place, covariates[m], _ => true, StudyWords.Say("AllowedNumber")) ?? level.Covariates[m];
    }

    /// <summary>The levels as the model takes them.</summary>
    /// <param name="table">Takes what is wrong with them as a whole.</param>
    public IReadOnlyList<ResponseLevel> Levels(StudyTable table)
    {
        foreach (var level in _drafts)
        {
            for (var m = 0; m < covariates.Count; m++)
                if (level.Covariates[m] is null) table.Fault("LevelWithoutCovariate", level.Name, covariates[m]);
        }
        var tasks = _drafts.Select(Task).Distinct().ToList();
        var places = Places(table, tasks);
        table.ThrowIfWrong();
        return [.. _drafts.Select(l => new ResponseLevel(tasks.IndexOf(Task(l)), l.Dose)
        {
            OrderLogits = l.OrderLogits ?? places?[tasks.IndexOf(Task(l))],
            Covariates = [.. l.Covariates.Select(c => c!.Value)],
        })];
    }

    // A level without a task is one of its own; the mark keeps it apart from a task of the same name.
    private static string Task(LevelDraft level) => level.Task ?? "\0" + level.Name;

    /// <summary>The order of the tasks as difficulties; none where no order is given.</summary>
    private IReadOnlyList<double>? Places(StudyTable table, List<string> tasks)
    {
        if (_drafts.All(l => l.Order is null)) return null;
        var given = tasks.Select(t => _drafts.Where(l => Task(l) == t).Select(l => l.Order).Distinct().ToList()).ToList();
        for (var t = 0; t < tasks.Count; t++)
            if (given[t].Count > 1 || given[t][0] is null) table.Fault("TaskOrderUnclear", tasks[t].TrimStart('\0'));
        table.ThrowIfWrong();
        var steps = given.Select(g => g[0]!.Value).Distinct().Order().ToList();
        return OrderScores.Of([.. given.Select(g => steps.IndexOf(g[0]!.Value))]);
    }

    /// <summary>A name in a column; none where the field is missing.</summary>
    private static string? Text(StudyTable table, CsvRow row, LevelDraft level, StudyColumn column)
    {
        if (table[row, column] is not { Length: > 0 } text) return null;
        Tell(table, row, level, StudyHeadings.Of(column), text, text);
        return text;
    }

    /// <summary>A number at a place; none where the field is missing, and where it cannot be taken, which is then said.</summary>
    private static double? Number(StudyTable table, CsvRow row, LevelDraft level, int? place, string what, Func<double, bool> isAllowed, string allowed)
    {
        if (StudyTable.Field(row, place) is not { Length: > 0 } text || table.Number(row, place, isAllowed, allowed) is not { } number) return null;
        // 5 and 5.0 are one number.
        Tell(table, row, level, what, number.ToString("R", CultureInfo.InvariantCulture), text);
        return number;
    }

    private static void Tell(StudyTable table, CsvRow row, LevelDraft level, string what, string said, string text)
    {
        if (level.Told(what, said, text, row) is var (earlier, at))
            table.Fault("LevelContradicted", table.At(row, StudyColumn.Level), level.Name, what, text, earlier, at.Place.ToString(null, CultureInfo.CurrentUICulture));
    }
}
