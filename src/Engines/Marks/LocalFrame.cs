namespace Slantwise.Engines.Marks;

/// <summary>A small piece of the form seen as if flat and from far away: a middle and what a millimetre to each side is in pixels.</summary>
internal readonly record struct LocalFrame(double XPx, double YPx, double AcrossXPx, double AcrossYPx, double DownXPx, double DownYPx)
{
    /// <summary>Around a place, from the places so far to each side.</summary>
    public static LocalFrame Around(PageMap map, double xMm, double yMm, double reachMm)
    {
        var (left, right) = (map.At(xMm - reachMm, yMm), map.At(xMm + reachMm, yMm));
        var (above, below) = (map.At(xMm, yMm - reachMm), map.At(xMm, yMm + reachMm));
        var (middle, bothMm) = (map.At(xMm, yMm), 2 * reachMm);
        return new(middle.XPx, middle.YPx, (right.XPx - left.XPx) / bothMm, (right.YPx - left.YPx) / bothMm,
            (below.XPx - above.XPx) / bothMm, (below.YPx - above.YPx) / bothMm);
    }

    public PixelPoint At(double xMm, double yMm) => new(XPx + xMm * AcrossXPx + yMm * DownXPx, YPx + xMm * AcrossYPx + yMm * DownYPx);

    public double Grey(PictureLevel level, double xMm, double yMm)
    {
        var at = At(xMm, yMm);
        return level.At(at.XPx, at.YPx);
    }

    public LocalFrame Moved(double xMm, double yMm)
    {
        var at = At(xMm, yMm);
        return this with { XPx = at.XPx, YPx = at.YPx };
    }

    public LocalFrame MovedTo(PixelPoint at) => this with { XPx = at.XPx, YPx = at.YPx };
}
