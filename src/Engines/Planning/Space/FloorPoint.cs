namespace Slantwise.Engines.Planning.Space;

/// <summary>A point on the floor of the hall.</summary>
/// <param name="XM">From the left wall.</param>
/// <param name="YM">From the front wall.</param>
public readonly record struct FloorPoint(double XM, double YM);
