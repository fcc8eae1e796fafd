namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>Five by five pairs of spreads about the peak, from 3 posterior standard deviations below to 3 above, along axes on which they are uncorrelated there.</summary>
internal static class ScaleGrid
{
    private static readonly double[] Steps = [-3, -1.5, 0, 1.5, 3];

    /// <summary>The points with their weights, which sum to 1; only the peak where no spread is estimated.</summary>
    public static WeightedPoint[] Of(ScaleSearch search, ScalePeak peak, Action<double> progress)
    {
        if (peak.Logs.Length == 0) return [new(peak.Point, 1)];
        // Lower triangular root of the covariance. No spread is known less well than it was beforehand; a flat peak could otherwise send the grid anywhere.
        var first = Math.Min(Math.Sqrt(peak.Covariance[0, 0]), search.Axes[0].Width);
        var lean = peak.Logs.Length == 2 ? peak.Covariance[1, 0] / peak.Covariance[0, 0] * first : 0;
        var second = peak.Logs.Length == 2 ? Math.Min(Math.Sqrt(peak.Covariance[1, 1] - peak.Covariance[1, 0] * peak.Covariance[1, 0] / peak.Covariance[0, 0]), search.Axes[1].Width) : 0;

        var found = new List<(Border.BorderPoint Point, double Value)>();
        foreach (var x in Steps)
        {
            if (peak.Logs.Length == 1) found.Add(search.At([peak.Logs[0] + first * x], true));
            else foreach (var y in Steps) found.Add(search.At([peak.Logs[0] + first * x, peak.Logs[1] + lean * x + second * y], true));
            progress((x + 3) / 6);
        }
        var most = found.Max(f => f.Value);
        var sum = found.Sum(f => Math.Exp(f.Value - most));
        return [.. found.Select(f => new WeightedPoint(f.Point, Math.Exp(f.Value - most) / sum))];
    }
}
