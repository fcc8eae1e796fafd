namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A share held, with its range.</summary>
/// <param name="HeldFraction">The share, 0 to 1.</param>
/// <param name="LowFraction">Lower end of the range.</param>
/// <param name="HighFraction">Upper end of the range.</param>
public readonly record struct HeldRange(double HeldFraction, double LowFraction, double HighFraction);
