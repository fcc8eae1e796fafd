namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>Paper that does not lie flat, along one direction over the sheet.</summary>
/// <param name="AcrossRad">The direction along which its height changes.</param>
/// <param name="FromMm">Where it begins, from the sheet's middle.</param>
/// <param name="CurvePerMm">Slope gained a millimetre: paper that curls up from there.</param>
/// <param name="KinkSlope">Slope at once: a fold.</param>
internal readonly record struct Bend(double AcrossRad, double FromMm, double CurvePerMm, double KinkSlope)
{
    /// <summary>The height of a place, and how much nearer to the bend it has come because paper does not stretch.</summary>
    public (double HeightMm, double ShiftMm) At(double alongMm)
    {
        var s = alongMm - FromMm;
        if (s <= 0) return (0, 0);
        // Slope k + c·s: height k s + c s²/2; length ∫ slope²/2 is lost along the table.
        var (k, c) = (KinkSlope, CurvePerMm);
        return (k * s + c * s * s / 2, (k * k * s + k * c * s * s + c * c * s * s * s / 3) / 2);
    }
}
