namespace Slantwise.Engines.Drawing;

/// <summary>One piece of an outline: a move, a straight piece, a cubic curve or the way back to the start.</summary>
/// <param name="Kind">Which piece; a close uses none of the numbers.</param>
/// <param name="XMm">Where it ends, from the left.</param>
/// <param name="YMm">Where it ends, from the top.</param>
/// <param name="C1XMm">First control point of a curve.</param>
/// <param name="C1YMm">First control point of a curve.</param>
/// <param name="C2XMm">Second control point of a curve.</param>
/// <param name="C2YMm">Second control point of a curve.</param>
public readonly record struct OutlineStep(
    OutlineStepKind Kind, double XMm = 0, double YMm = 0,
    double C1XMm = 0, double C1YMm = 0, double C2XMm = 0, double C2YMm = 0);
