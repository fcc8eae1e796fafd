namespace Slantwise.Engines.Statistics;

/// <summary>A range for the share behind a count of successes, honest for few trials: it never leaves 0 to 1.</summary>
/// <param name="LowFraction">The lower end, 0 to 1; exactly 0 where nothing succeeded.</param>
/// <param name="HighFraction">The upper end, 0 to 1; exactly 1 where everything succeeded.</param>
/// <remarks>The score interval without a continuity correction. Sources: [Wilson1927] p. 209; [Newcombe1998] method 3.</remarks>
public readonly record struct WilsonInterval(double LowFraction, double HighFraction)
{
    /// <summary>The range of shares that would not make this count surprising.</summary>
    /// <param name="successCount">0 to the number of trials.</param>
    /// <param name="trialCount">0 or more.</param>
    /// <param name="confidenceFraction">How often such ranges hold the true share, between 0 and 1: 0.90, 0.95.</param>
    /// <returns>None where there was no trial: nothing is known yet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Successes below 0 or above the trials; a confidence that is not between 0 and 1.</exception>
    public static WilsonInterval? Of(int successCount, int trialCount, double confidenceFraction)
    {
        Counts.Check(successCount, trialCount);
        Confidence.Check(confidenceFraction);
        if (trialCount == 0) return null;

        double n = trialCount;
        var share = successCount / n;
        var z = Confidence.HalfWidthSd(confidenceFraction);
        var shrink = 1 + z * z / n;
        var centre = (share + z * z / (2 * n)) / shrink;
        var half = z * Math.Sqrt(share * (1 - share) / n + z * z / (4 * n * n)) / shrink;
        // The ends meet 0 and 1 exactly in the algebra; in floating point they would miss by a rounding.
        return new(
            successCount == 0 ? 0 : Math.Max(0, centre - half),
            successCount == trialCount ? 1 : Math.Min(1, centre + half));
    }
}
