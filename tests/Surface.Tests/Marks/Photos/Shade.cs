namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>A place of other light: the shadow of a hand, or glare. An ellipse on the sheet with a soft edge.</summary>
/// <param name="XMm">Its middle, on the sheet.</param>
/// <param name="YMm">Its middle, on the sheet.</param>
/// <param name="LengthMm">Half its length.</param>
/// <param name="WidthMm">Half its width.</param>
/// <param name="TurnRad">Its direction.</param>
/// <param name="SoftFraction">Over which share of its size its edge fades.</param>
/// <param name="TakenFraction">How much light it takes away.</param>
/// <param name="AddedFraction">How much white it adds.</param>
internal sealed record Shade(double XMm, double YMm, double LengthMm, double WidthMm, double TurnRad, double SoftFraction, double TakenFraction, double AddedFraction)
{
    /// <summary>How much of it falls on a place, 0 to 1.</summary>
    public double At(double xMm, double yMm)
    {
        var (sin, cos) = Math.SinCos(TurnRad);
        var (dx, dy) = (xMm - XMm, yMm - YMm);
        var (a, b) = ((dx * cos + dy * sin) / LengthMm, (dy * cos - dx * sin) / WidthMm);
        var t = Math.Clamp((1 - Math.Sqrt(a * a + b * b)) / SoftFraction + .5, 0, 1);
        return t * t * (3 - 2 * t);
    }
}
