using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>Whether the first judge gives more than the second on the whole: a pupil who ticks what the teacher did not see over-reports.</summary>
/// <param name="OverCount">The first gave a higher category.</param>
/// <param name="UnderCount">The first gave a lower one.</param>
/// <param name="PairCount">All that was judged by both.</param>
/// <param name="BiasFraction">Over less under, of all pairs, −1 to 1; none without a pair.</param>
/// <param name="ChanceFraction">How often judges with no lean would differ as one-sidedly or more, every pair taken for independent; 1 where none differ, none without a pair.</param>
/// <param name="IsExact">Whether that chance is the exact binomial one, as it is under 25 differences.</param>
/// <remarks>Source: [McNemar1947].</remarks>
public readonly record struct ReportBalance(
    int OverCount, int UnderCount, int PairCount, double? BiasFraction, double? ChanceFraction, bool IsExact)
{
    /// <summary>The balance of a table.</summary>
    /// <param name="table">Categories in order, a tick after no tick.</param>
    public static ReportBalance Of(AgreementTable table)
    {
        int over = 0, under = 0;
        for (var i = 0; i < table.CategoryCount; i++)
        {
            for (var j = 0; j < i; j++)
            {
                over += table[i, j];
                under += table[j, i];
            }
        }
        var (n, differ) = (table.PairCount, over + under);
        if (n == 0) return new(0, 0, 0, null, null, true);
        var exact = differ < 25;
        var chance = differ == 0 ? 1
            : exact ? Math.Min(1, 2 * Binomial.CDF(0.5, differ, Math.Min(over, under)))
            // The normal law's two tails beyond (over − under) / √(over + under).
            : 2 * Normal.CDF(0, 1, -Math.Abs(over - under) / Math.Sqrt(differ));
        return new(over, under, n, (double)(over - under) / n, chance, exact);
    }
}
