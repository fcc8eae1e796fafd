namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>Agreement of any number of judges beyond chance, on any scale, where some ratings are missing.</summary>
/// <param name="AlphaFraction">1 less the disagreement seen over the disagreement expected, at most 1; none where it is not defined.</param>
/// <param name="UnitCount">Things rated by two or more.</param>
/// <param name="RatingCount">Their ratings; a thing rated once compares nothing and drops out.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Source: [Krippendorff2011].</remarks>
public readonly record struct KrippendorffAlpha(double? AlphaFraction, int UnitCount, int RatingCount, AgreementCautions Cautions)
{
    /// <summary>Alpha of some ratings.</summary>
    /// <param name="units">For each thing its ratings, in any order, any number; none where a judge did not rate. Categories of a nominal or ordinal scale are numbers, too.</param>
    /// <param name="scale">What their differences mean.</param>
    /// <returns>No value where nothing was rated twice or all ratings are the same.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rating that is not finite; a negative one on the ratio scale; a scale that is none of the four.</exception>
    public static KrippendorffAlpha Of(IReadOnlyList<IReadOnlyList<double?>> units, RatingScale scale)
    {
        if (!Enum.IsDefined(scale)) throw new ArgumentOutOfRangeException(nameof(scale), scale, "A scale is nominal, ordinal, interval or ratio.");
        foreach (var rating in units.SelectMany(u => u))
            if (rating is { } r && (!double.IsFinite(r) || (scale == RatingScale.Ratio && r < 0)))
                throw new ArgumentOutOfRangeException(nameof(units), r, "A rating is a number, on the ratio scale not below 0.");

        var paired = units.Select(u => u.OfType<double>().ToList()).Where(u => u.Count > 1).ToList();
        if (paired.Count == 0) return new(null, 0, 0, AgreementCautions.NoPairs);

        var values = paired.SelectMany(u => u).GroupBy(r => r).OrderBy(g => g.Key).Select(g => (Value: g.Key, Count: g.Count())).ToArray();
        var place = values.Select((v, i) => (v.Value, i)).ToDictionary(v => v.Value, v => v.i);
        var below = new int[values.Length];
        for (var c = 1; c < values.Length; c++) below[c] = below[c - 1] + values[c - 1].Count;
        // Against the largest of them, so that no square of a difference over- or underflows; alpha does not mind.
        var largest = values.Max(v => Math.Abs(v.Value)) is var most && most > 0 ? most : 1;
        double Difference(int c, int k)
        {
            var (a, b) = (values[c].Value / largest, values[k].Value / largest);
            var step = scale switch
            {
                RatingScale.Nominal => c == k ? 0 : 1,
                // Ratings between the two, half of each end's own among them.
                RatingScale.Ordinal => below[k] + values[k].Count / 2.0 - below[c] - values[c].Count / 2.0,
                RatingScale.Interval => a - b,
                _ => a + b == 0 ? 0 : (a - b) / (a + b),
            };
            return step * step;
        }

        var count = values.Sum(v => v.Count);
        var mostly = values.Max(v => v.Count) > .85 * count ? AgreementCautions.MostlyOneCategory : 0;
        var cautions = (paired.Count < 10 ? AgreementCautions.FewPairs : 0) | mostly;
        if (values.Length < 2) return new(null, paired.Count, count, cautions | AgreementCautions.OneCategory);

        var seen = paired.Sum(u => u.Sum(a => u.Sum(b => Difference(place[a], place[b]))) / (u.Count - 1));
        var expected = 0.0;
        for (var c = 0; c < values.Length; c++)
            for (var k = 0; k < values.Length; k++)
                expected += (double)values[c].Count * values[k].Count * Difference(c, k);
        return new(1 - seen / (expected / (count - 1)), paired.Count, count, cautions);
    }
}
