using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>Judgements from a plain table: who gave which thing what.</summary>
/// <param name="Raters">The judges by name, by index.</param>
/// <param name="Categories">The different judgements, in order where they have one, by index.</param>
/// <param name="Values">The categories as numbers; none where some are no numbers.</param>
/// <param name="IsOrdered">Whether the order of the categories means something: numbers, or named on the command line.</param>
/// <param name="Units">The things judged.</param>
/// <param name="HasPupils">Whether the table says whose each thing is.</param>
/// <param name="Notes">What was passed over.</param>
internal sealed record JudgementStudy(
    IReadOnlyList<string> Raters, IReadOnlyList<string> Categories, IReadOnlyList<double>? Values, bool IsOrdered,
    IReadOnlyList<JudgedUnit> Units, bool HasPupils, IReadOnlyList<Finding> Notes)
{
    private static readonly StudyColumn[] Columns = [StudyColumn.Unit, StudyColumn.Rater, StudyColumn.Value, StudyColumn.Pupil];

    /// <summary>The things given a category by two judges or more.</summary>
    public IEnumerable<JudgedUnit> Paired => Units.Where(u => u.Given.Count > 1);

    /// <summary>One table of two judges' categories a pupil; a single one where no pupils are named. Only for two judges.</summary>
    public IReadOnlyList<AgreementTable> PairTables() => [.. Paired
        .GroupBy(u => u.Pupil, u => new RatedPair(u.Given[0], u.Given[1]))
        .Select(g => AgreementTable.Of(CategoryCount, g))
        .DefaultIfEmpty(AgreementTable.Of(CategoryCount, []))];

    /// <summary>How many judges gave each paired thing each category.</summary>
    public RatingCounts Counts() => RatingCounts.Of(
        [.. Paired.Select(u => (IReadOnlyList<int>)[.. Enumerable.Range(0, CategoryCount).Select(c => u.Given.Values.Count(g => g == c))])], CategoryCount);

    /// <summary>The judgements on a scale: by category, or as the numbers they are.</summary>
    public IReadOnlyList<IReadOnlyList<double?>> On(RatingScale scale) => [.. Units.Select(u => (IReadOnlyList<double?>)
        [.. u.Given.OrderBy(g => g.Key).Select(g => (double?)(scale is RatingScale.Interval or RatingScale.Ratio ? Values![g.Value] : g.Value))])];

    // Agreement needs room for a disagreement, even where nobody disagreed.
    private int CategoryCount => Math.Max(2, Categories.Count);

    /// <summary>Reads a table with the columns unit, rater and value, or with a column for each judge and a row for each thing.</summary>
    /// <param name="file">The table.</param>
    /// <param name="named">The categories in order; none to take them from the table.</param>
    /// <param name="cancel">Ends the reading.</param>
    public static async Task<JudgementStudy> ReadAsync(string file, IReadOnlyList<string> named, CancellationToken cancel)
    {
        var table = await StudyTable.ReadAsync(file, Columns, cancel);
        var isLong = table.Has(StudyColumn.Rater) && table.Has(StudyColumn.Value);
        if (isLong) table.Need(StudyColumn.Unit);
        else table.Need();
        // Of two columns neither can be anything but a judge's, even one that is headed "pupil".
        var isBare = !isLong && table.Headings.Count == 2;
        List<string> raters = isLong ? [] : isBare ? [.. table.Headings] : [.. table.Unknown];
        if (!isLong && raters.Count < 2) throw StudyRefusal.Of("JudgementColumns", table.Name, string.Join(", ", table.Headings));
        var hasPupils = !isBare && table.Has(StudyColumn.Pupil);
        var given = isLong ? Long(table, raters, named, hasPupils) : Wide(table, raters, named, hasPupils);
        table.ThrowIfWrong();
        if (raters.Count < 2) throw StudyRefusal.Of("OneRater", table.Name, raters.FirstOrDefault() ?? Numbers.None);

        var seen = given.SelectMany(u => u.Given.Values).Distinct().ToList();
        double? Number(string text) => table.TryNumber(text, out var number) ? number : null;
        var areNumbers = seen.Count > 0 && seen.Concat(named).All(c => Number(c) is not null);
        // 1 and 1.0 are one number, though two texts.
        object Key(string text) => areNumbers ? Number(text)! : text;
        string[] categories = named.Count > 0 ? [.. named] : areNumbers ? [.. seen.DistinctBy(Key).OrderBy(Number)] : [.. seen.Order(StringComparer.Ordinal)];
        var index = categories.Select((c, i) => (Key: Key(c), i)).ToDictionary(c => c.Key, c => c.i);
        var units = given.Select(u => new JudgedUnit(u.Name, u.Pupil, u.Given.ToDictionary(g => g.Key, g => index[Key(g.Value)])));
        return new(
            raters, categories, areNumbers ? [.. categories.Select(c => Number(c)!.Value)] : null, named.Count > 0 || areNumbers,
            [.. units], hasPupils, [.. table.Notes(isLong ? [] : raters)]);
    }

    private static List<Draft> Wide(StudyTable table, List<string> raters, IReadOnlyList<string> named, bool hasPupils)
    {
        var units = new List<Draft>();
        var places = raters.Select(r => table.PlaceOf(r)).ToList();
        foreach (var row in table.Rows)
        {
            var unit = new Draft(table[row, StudyColumn.Unit], PupilOf(table, row, hasPupils));
            for (var r = 0; r < raters.Count; r++)
                if (Category(table, row, places[r], named) is { } category) unit.Given.Add(r, category);
            units.Add(unit);
        }
        return units;
    }

    private static List<Draft> Long(StudyTable table, List<string> raters, IReadOnlyList<string> named, bool hasPupils)
    {
        var (units, lines) = (new Dictionary<string, Draft>(), new Dictionary<(string, int), int>());
        foreach (var row in table.Rows)
        {
            var (name, rater, pupil) = (table.Named(row, StudyColumn.Unit), table.Named(row, StudyColumn.Rater), PupilOf(table, row, hasPupils));
            if (name is null || rater is null) continue;
            var r = raters.IndexOf(rater);
            if (r < 0)
            {
                r = raters.Count;
                raters.Add(rater);
            }
            if (!units.TryGetValue(name, out var unit)) units[name] = unit = new(name, pupil);
            if (unit.Pupil != pupil) table.Fault("UnitOfTwoPupils", table.At(row, StudyColumn.Pupil), name, unit.Pupil, pupil);
            if (!lines.TryAdd((name, r), row.LineNumber)) table.Fault("JudgedTwice", table.At(row, StudyColumn.Rater), rater, name, lines[(name, r)]);
            else if (Category(table, row, table.PlaceOf(StudyColumn.Value), named) is { } category) unit.Given.Add(r, category);
        }
        return [.. units.Values];
    }

    private static string? PupilOf(StudyTable table, CsvRow row, bool hasPupils) => hasPupils ? table.Named(row, StudyColumn.Pupil) : null;

    /// <summary>What was given; none where the judge gave nothing, or something that is not possible, which is then said.</summary>
    private static string? Category(StudyTable table, CsvRow row, int? place, IReadOnlyList<string> named)
    {
        var text = StudyTable.Field(row, place);
        if (text.Length == 0) return null;
        if (named.Count == 0 || named.Contains(text)) return text;
        table.Wrong(row, place, string.Join(", ", named));
        return null;
    }

    private sealed record Draft(string Name, string? Pupil)
    {
        public Dictionary<int, string> Given { get; } = [];
    }
}
