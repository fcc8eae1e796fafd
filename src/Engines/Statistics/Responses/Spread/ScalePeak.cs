using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>The likeliest spreads, and the points around them from which their uncertainty is known.</summary>
/// <param name="Logs">Logarithm of each estimated spread.</param>
/// <param name="Point">The border there.</param>
/// <param name="Value">What was maximised: evidence and prior, or the likelihood where nothing is assumed.</param>
/// <param name="Covariance">Of the logarithms, by the curvature at the peak.</param>
/// <param name="Sides">For each spread a point a little above and a little below.</param>
/// <param name="IsAtEdge">Whether a spread ran to the end of its range.</param>
/// <param name="HasConverged">Whether the search and all that it rests on reached their ends.</param>
/// <param name="Rounds">Passes over the pupils altogether.</param>
internal sealed record ScalePeak(
    double[] Logs, BorderPoint Point, double Value, double[,] Covariance, (BorderPoint Above, BorderPoint Below)[] Sides, bool IsAtEdge, bool HasConverged, int Rounds)
{
    /// <summary>What the determinant added to the spreads' slopes at the peak, by spread; empty where that was not asked.</summary>
    public double[] Tilt { get; init; } = [];
}
