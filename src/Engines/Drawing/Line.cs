namespace Slantwise.Engines.Drawing;

/// <summary>A straight line.</summary>
/// <param name="X1Mm">Start, from the left.</param>
/// <param name="Y1Mm">Start, from the top.</param>
/// <param name="X2Mm">End, from the left.</param>
/// <param name="Y2Mm">End, from the top.</param>
/// <param name="WidthMm">The stroke's width, more than 0.</param>
/// <param name="Tone">The stroke's colour.</param>
/// <param name="IsDashed">Dashed, for what is assumed rather than seen.</param>
public sealed record Line(
    double X1Mm, double Y1Mm, double X2Mm, double Y2Mm, double WidthMm, Tone Tone, bool IsDashed = false) : Shape(Tone);
