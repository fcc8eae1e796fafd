namespace Slantwise.Engines.Drawing;

/// <summary>A circle.</summary>
/// <param name="XMm">Its centre, from the left.</param>
/// <param name="YMm">Its centre, from the top.</param>
/// <param name="RadiusMm">More than 0.</param>
/// <param name="Tone">The colour of its fill, or of its outline.</param>
/// <param name="StrokeMm">Width of the outline; 0 for a filled disc.</param>
public sealed record Disc(double XMm, double YMm, double RadiusMm, Tone Tone, double StrokeMm = 0) : Shape(Tone);
