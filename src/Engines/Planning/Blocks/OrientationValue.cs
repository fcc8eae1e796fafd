namespace Slantwise.Engines.Planning.Blocks;

/// <summary>A published value to orient by; never a rule.</summary>
/// <param name="Category">What it is about.</param>
/// <param name="LowFraction">The least share of a lesson, 0 to 1.</param>
/// <param name="HighFraction">The largest share, not below the least.</param>
/// <param name="Source">Who says so, as the caller names it; shown beside the value.</param>
public readonly record struct OrientationValue(TimeCategory Category, double LowFraction, double HighFraction, string Source);
