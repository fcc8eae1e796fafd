namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>How two observers of the same intervals agree on whether something happened.</summary>
/// <param name="IntervalCount">The intervals both observed.</param>
/// <param name="AgreementFraction">The share on which they agree: flattering where the thing is rare or nearly always there; none without an interval.</param>
/// <param name="OccurrenceFraction">Of the intervals in which either saw it, the share in which both did; none where neither ever did.</param>
/// <param name="AbsenceFraction">Of the intervals in which either missed it, the share in which both did; none where neither ever did.</param>
/// <param name="SeenFraction">The share of their judgements that saw it; none without an interval.</param>
/// <param name="TotalsFraction">The smaller of their totals over the larger: 1 also where they counted the same number in different intervals; none where neither saw it.</param>
/// <remarks>Source: [HawkinsDotson1975] for agreement on occurrence and on absence.</remarks>
public readonly record struct ObserverAgreement(
    int IntervalCount, double? AgreementFraction, double? OccurrenceFraction, double? AbsenceFraction, double? SeenFraction, double? TotalsFraction)
{
    /// <summary>The agreement of a table.</summary>
    /// <param name="table">Two categories: not seen, seen.</param>
    /// <exception cref="ArgumentException">More than two categories.</exception>
    public static ObserverAgreement Of(AgreementTable table)
    {
        if (table.CategoryCount != 2) throw new ArgumentException("Something was seen or not: two categories.", nameof(table));
        var (n, both, neither, first, second) = (table.PairCount, table[1, 1], table[0, 0], table.FirstCount(1), table.SecondCount(1));
        return new(
            n, Share(both + neither, n), Share(both, n - neither), Share(neither, n - both),
            Share(first + second, 2 * n), Share(Math.Min(first, second), Math.Max(first, second)));
    }

    private static double? Share(int part, int whole) => whole == 0 ? null : (double)part / whole;
}
