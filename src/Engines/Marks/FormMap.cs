namespace Slantwise.Engines.Marks;

/// <summary>A flat page seen from somewhere, bent a little.</summary>
internal sealed class FormMap(Homography flat, BendingSurface? bend) : PageMap
{
    public Homography Flat => flat;

    public override PixelPoint At(double xMm, double yMm)
    {
        if (bend is null) return flat.At(xMm, yMm);
        var (dxMm, dyMm) = bend.At(xMm, yMm);
        return flat.At(xMm + dxMm, yMm + dyMm);
    }

    /// <summary>How far the bend moves a place.</summary>
    public (double DxMm, double DyMm) BendAt(double xMm, double yMm) => bend?.At(xMm, yMm) ?? (0, 0);

    /// <summary>Pixels a millimetre at a place, the bend left out.</summary>
    public double ScaleAt(double xMm, double yMm) => flat.Scale(xMm, yMm);
}
