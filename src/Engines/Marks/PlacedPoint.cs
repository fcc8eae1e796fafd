namespace Slantwise.Engines.Marks;

/// <summary>A place of the form and where it was seen.</summary>
/// <param name="XMm">On the form.</param>
/// <param name="YMm">On the form.</param>
/// <param name="XPx">In the picture.</param>
/// <param name="YPx">In the picture.</param>
/// <param name="Weight">How much it counts against others; 0 for not at all.</param>
internal readonly record struct PlacedPoint(double XMm, double YMm, double XPx, double YPx, double Weight = 1);
