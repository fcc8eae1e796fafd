namespace Slantwise.Engines.Drawing.Figures;

/// <summary>A point of a figure's surroundings.</summary>
/// <param name="XMm">From the left.</param>
/// <param name="YMm">From the top.</param>
public readonly record struct Spot(double XMm, double YMm);
