using System.Globalization;

namespace Slantwise.Records.Tasks.Designs.Grids;

public static partial class GridEdit
{
    /// <summary>Gives a row its values from the easy to the hard end, as a teacher writes them.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">The row.</param>
    /// <param name="language">The language of the words.</param>
    /// <param name="lines">The values in order; empty ones are passed over, and so is a value that is there already.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <returns>
    /// A line that was there keeps its key and with it the levels that stand on it. Where as many lines are there as before, a line that is new says another
    /// word for what stood in its place; else it is a new value, in every language until somebody translates it. A number that cannot be read is left out.
    /// </returns>
    public static TaskDesign WithValues(TaskDesign design, string key, string language, IReadOnlyList<string> lines, CultureInfo culture)
    {
        var row = Row(design, key);
        var given = lines.Select(l => l.Trim()).Where(l => l.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        if (row.Dose is not null || row.Unit is not null) return Replace(design, row with { Range = Numbers(given, culture) });

        var old = row.Range.Select(v => (Value: v, Said: SaidOf(design, row, v, language))).ToList();
        var isSameCount = given.Count == old.Count;
        var keys = new List<string>();
        foreach (var (line, i) in given.Select((line, i) => (line, i)))
        {
            var same = old.Where(o => string.Equals(o.Said, line, StringComparison.OrdinalIgnoreCase)).Select(o => o.Value.Key).FirstOrDefault();
            // Renamed only if what stood here is not said elsewhere now: two lines that changed places are two old values.
            var stood = isSameCount && !given.Contains(old[i].Said, StringComparer.OrdinalIgnoreCase) ? old[i].Value.Key : null;
            keys.Add(same ?? stood ?? FactorKeys.Of(line, [.. keys, .. old.Select(o => o.Value.Key)]));
        }
        var changed = Replace(design, row with { Range = [.. keys.Select(k => FactorValue.Of(k))] });
        return changed with
        {
            Words = OfAll(changed, words =>
            {
                var known = ValuesOf(words, key);
                var values = keys.Zip(given).ToDictionary(pair => pair.First, pair => words.Language == language ? pair.Second : known.GetValueOrDefault(pair.First, pair.Second));
                return WithFactor(words, key, new FactorWords(words.Factors.TryGetValue(key, out var named) ? named.Name : key, values));
            }),
        };
    }

    /// <summary>Makes a row's values numbers in a unit, or words.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">A row that is no dose: its key is its unit.</param>
    /// <param name="unit">The unit; none for words.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <returns>Values that can be read as numbers stay, others go; levels lose the places that are gone. Numbers become words as they are written.</returns>
    public static TaskDesign WithUnit(TaskDesign design, string key, FactorUnit? unit, CultureInfo culture)
    {
        var row = Row(design, key);
        if (row.Dose is not null || row.Unit == unit) return design;
        if (row.Unit is not null && unit is not null) return Replace(design, row with { Unit = unit });
        var language = design.Words.Keys.FirstOrDefault() ?? "";
        var said = row.Range.Select(v => SaidOf(design, row, v, language, culture)).ToList();
        var turned = Replace(design, row with { Unit = unit, Range = [] });
        return WithValues(turned, key, language, said, culture);
    }

    private static IReadOnlyList<FactorValue> Numbers(IReadOnlyList<string> lines, CultureInfo culture)
    {
        var read = lines.Select(l => decimal.TryParse(l, NumberStyles.Number, culture, out var n) || decimal.TryParse(l, NumberStyles.Number, CultureInfo.InvariantCulture, out n) ? n : (decimal?)null)
            .OfType<decimal>().Distinct().ToList();
        // A number in the wrong line would make the row go up and down: the two ends say which way it goes.
        if (read.Count > 1) read = read[0] > read[^1] ? [.. read.OrderDescending()] : [.. read.Order()];
        return [.. read.Select(FactorValue.Of)];
    }

    private static string SaidOf(TaskDesign design, TaskFactor row, FactorValue value, string language, CultureInfo? culture = null) =>
        value.Amount is { } amount ? amount.ToString(culture)
        : design.Words.TryGetValue(language, out var words) && ValuesOf(words, row.Key).TryGetValue(value.Key, out var said) ? said : value.Key;
}
