using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>What rows say of levels: task, dose and measure, place in the order, further covariates.</summary>
/// <param name="covariates">Headings of further covariates, as named on the command line.</param>
internal sealed class LevelRows(IReadOnlyList<string> covariates)
{
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
        string Once(StudyColumn column)
        {
            var text = table[row, column];
            Contradict(table, row, level, StudyHeadings.Of(column), text);
            return text;
        }

        if (Once(StudyColumn.Task) is { Length: > 0 } task) level.Task = task;
        if (Once(StudyColumn.Measure) is { Length: > 0 } measure)
        {
            if (Measures.TryGetValue(CsvColumns<StudyColumn>.Folded(measure), out var known)) level.Measure = known;
            else table.Wrong(row, StudyColumn.Measure, "hold, repetitions, distance, height, target_size");
        }
        if (Once(StudyColumn.Dose).Length > 0)
        {
            level.Amount = level.Measure == DoseMeasure.Repetitions
                ? table.Count(row, StudyColumn.Dose, 1, 100_000)
                : table.Number(row, StudyColumn.Dose, n => n > 0, StudyWords.Say("AllowedAboveZero"));
        }
        if (Once(StudyColumn.Order).Length > 0) level.Order = table.Number(row, StudyColumn.Order, _ => true, StudyWords.Say("AllowedNumber"));
        if (Once(StudyColumn.OrderLogits).Length > 0) level.OrderLogits = table.Number(row, StudyColumn.OrderLogits, _ => true, StudyWords.Say("AllowedNumber"));
        for (var m = 0; m < covariates.Count; m++)
        {
            if (table.PlaceOf(covariates[m]) is not { } place) continue;
            Contradict(table, row, level, covariates[m], StudyTable.Field(row, place));
            level.Covariates[m] = table.Number(row, place, _ => true, StudyWords.Say("AllowedNumber"));
        }
    }

    /// <summary>The levels as the model takes them.</summary>
    /// <param name="table">Takes what is wrong with them as a whole.</param>
    public IReadOnlyList<ResponseLevel> Levels(StudyTable table)
    {
        foreach (var level in _drafts)
        {
            for (var m = 0; m < covariates.Count; m++)
                if (level.Covariates[m] is null) table.Refuse("LevelWithoutCovariate", level.Name, covariates[m]);
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
            if (given[t].Count > 1 || given[t][0] is null) table.Refuse("TaskOrderUnclear", tasks[t].TrimStart('\0'));
        table.ThrowIfWrong();
        var steps = given.Select(g => g[0]!.Value).Distinct().Order().ToList();
        return OrderScores.Of([.. given.Select(g => steps.IndexOf(g[0]!.Value))]);
    }

    private static void Contradict(StudyTable table, CsvRow row, LevelDraft level, string what, string text)
    {
        if (text.Length == 0) return;
        if (level.Told(what, text, table.At(row, StudyColumn.Level)) is { } earlier)
            table.Refuse("LevelContradicted", table.At(row, StudyColumn.Level), level.Name, what, text, earlier.Text, earlier.At);
    }
}
