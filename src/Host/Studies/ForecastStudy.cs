using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>Predicted chances and what came, from a plain table.</summary>
/// <param name="Forecasts">All of them, each with its group and pupil; empty names where the table has no such column.</param>
/// <param name="HasGroups">Whether the table has groups.</param>
/// <param name="HasPupils">Whether the table names pupils.</param>
/// <param name="Notes">What was passed over.</param>
internal sealed record ForecastStudy(IReadOnlyList<(Forecast Forecast, string Group, string Pupil)> Forecasts, bool HasGroups, bool HasPupils, IReadOnlyList<Finding> Notes)
{
    private const int MostTrials = 100_000_000;

    private static readonly StudyColumn[] Columns = [StudyColumn.Predicted, StudyColumn.Outcome, StudyColumn.Trials, StudyColumn.Successes, StudyColumn.Group, StudyColumn.Pupil];

    /// <summary>Reads a table with the columns predicted and outcome, or predicted, successes and trials.</summary>
    public static async Task<ForecastStudy> ReadAsync(string file, CancellationToken cancel)
    {
        var table = await StudyTable.ReadAsync(file, Columns, cancel);
        table.Need(StudyColumn.Predicted);
        if (table.Has(StudyColumn.Successes)) table.Need(StudyColumn.Trials);
        else table.Need(StudyColumn.Outcome);
        var read = new List<(Forecast, string, string)>();
        foreach (var row in table.Rows)
        {
            var said = table.Number(row, StudyColumn.Predicted, p => p is >= 0 and <= 1, StudyWords.Say("AllowedFraction"));
            var trials = table.Has(StudyColumn.Trials) ? table.Count(row, StudyColumn.Trials, 1, MostTrials) : 1;
            var successes = trials is { } n ? Successes(table, row, n) : null;
            var group = table.Has(StudyColumn.Group) ? table.Named(row, StudyColumn.Group) : "";
            var pupil = table.Has(StudyColumn.Pupil) ? table.Named(row, StudyColumn.Pupil) : "";
            if (said is { } chance && trials is { } all && successes is { } came && group is not null && pupil is not null) read.Add((new(chance, came, all), group, pupil));
        }
        if (read.Sum(f => (long)f.Item1.TrialCount) > int.MaxValue) table.Fault("TooManyTrials", table.Name, int.MaxValue);
        table.ThrowIfWrong();
        return new(read, table.Has(StudyColumn.Group), table.Has(StudyColumn.Pupil), [.. table.Notes()]);
    }

    private static int? Successes(StudyTable table, CsvRow row, int trials)
    {
        if (table.Has(StudyColumn.Successes)) return table.Count(row, StudyColumn.Successes, 0, trials);
        if (!table.Has(StudyColumn.Trials)) return table.Tick(row, StudyColumn.Outcome) is { } came ? came ? 1 : 0 : null;
        // A share stands for a whole number of successes, as far as its digits can say.
        var text = table[row, StudyColumn.Outcome];
        var digits = text.Length - 1 - text.LastIndexOfAny(['.', ',']) is var d && d < text.Length ? d : 0;
        var rounding = trials * 0.5 * Math.Pow(10, -digits) + 1e-9 * trials;
        return table.Number(row, StudyColumn.Outcome, s => s is >= 0 and <= 1 && Math.Abs(s * trials - Math.Round(s * trials)) <= rounding, StudyWords.Say("AllowedShareOf", trials)) is { } share
            ? (int)Math.Round(share * trials) : null;
    }
}
