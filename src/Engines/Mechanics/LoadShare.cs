namespace Slantwise.Engines.Mechanics;

/// <summary>What one contact carries.</summary>
/// <param name="ShareFraction">Share of the body's weight under the stated assumption, 0 to 1.</param>
/// <param name="LeastFraction">The least that statics alone allows.</param>
/// <param name="MostFraction">The most that statics alone allows.</param>
public readonly record struct LoadShare(double ShareFraction, double LeastFraction, double MostFraction);
