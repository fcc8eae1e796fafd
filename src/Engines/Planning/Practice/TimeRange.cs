namespace Slantwise.Engines.Planning.Practice;

/// <summary>A time over many simulated lessons.</summary>
/// <param name="LowS">One lesson in twenty is below.</param>
/// <param name="MedianS">Half are below.</param>
/// <param name="HighS">One lesson in twenty is above.</param>
public readonly record struct TimeRange(double LowS, double MedianS, double HighS);
