namespace Slantwise.Engines.Planning.Practice;

/// <summary>A share over many simulated lessons, 0 to 1.</summary>
/// <param name="LowFraction">One lesson in twenty is below.</param>
/// <param name="MedianFraction">Half are below.</param>
/// <param name="HighFraction">One lesson in twenty is above.</param>
public readonly record struct ShareRange(double LowFraction, double MedianFraction, double HighFraction);
