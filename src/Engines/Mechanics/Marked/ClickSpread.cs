namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A person's own error of clicking, from points that were marked more than once.</summary>
/// <param name="ClickSdPx">Standard deviation of one click in one direction.</param>
/// <param name="DegreeCount">Degrees of freedom behind it, two a repeated click.</param>
public sealed record ClickSpread(double ClickSdPx, int DegreeCount)
{
    /// <summary>Fewer than these, from five repeated clicks, say too little: the usual error is the better guess.</summary>
    public const int EnoughCount = 10;

    /// <summary>The spread of repeated marks about their means, pooled over the points.</summary>
    /// <param name="points">Any marks.</param>
    /// <returns>None where no point was marked twice.</returns>
    /// <exception cref="ArgumentException">A mark that is not finite.</exception>
    public static ClickSpread? Of(IReadOnlyList<MarkedPoint> points)
    {
        if (!points.All(p => p.At.IsFinite)) throw new ArgumentException("Every mark has finite coordinates.", nameof(points));
        var (sumPx2, degrees) = (0.0, 0);
        foreach (var same in points.GroupBy(p => (p.Landmark, p.Side)).Where(g => g.Count() > 1))
        {
            var mean = 1.0 / same.Count() * same.Aggregate(new PointPx(0, 0), (sum, p) => sum + p.At);
            sumPx2 += same.Sum(p => (p.At - mean).LengthPx * (p.At - mean).LengthPx);
            degrees += 2 * (same.Count() - 1);
        }
        return degrees == 0 ? null : new ClickSpread(Math.Sqrt(sumPx2 / degrees), degrees);
    }
}
