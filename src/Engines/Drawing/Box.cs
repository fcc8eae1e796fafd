namespace Slantwise.Engines.Drawing;

/// <summary>A rectangle with its sides along the page.</summary>
/// <param name="XMm">Left side.</param>
/// <param name="YMm">Top side.</param>
/// <param name="WidthMm">More than 0.</param>
/// <param name="HeightMm">More than 0.</param>
/// <param name="Tone">The colour of its fill, or of its outline.</param>
/// <param name="StrokeMm">Width of the outline, drawn on the edge; 0 for a filled box.</param>
/// <param name="RadiusMm">Radius of the corners; 0 for square ones.</param>
public sealed record Box(
    double XMm, double YMm, double WidthMm, double HeightMm, Tone Tone, double StrokeMm = 0, double RadiusMm = 0) : Shape(Tone);
