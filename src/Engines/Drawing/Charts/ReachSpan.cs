namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A stretch of the line from easier to harder.</summary>
/// <param name="LowLogits">Where it begins.</param>
/// <param name="HighLogits">Where it ends, not before it begins.</param>
public readonly record struct ReachSpan(double LowLogits, double HighLogits);
