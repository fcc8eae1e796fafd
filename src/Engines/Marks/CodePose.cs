namespace Slantwise.Engines.Marks;

/// <summary>Where the form would lie by its code alone, as if seen from far away: good near the code, rough far from it.</summary>
internal sealed class CodePose
{
    private readonly PlacedPoint _corner;
    private readonly double _finderMm;
    private readonly PixelPoint _across, _down;

    private CodePose(SheetLayout layout, CodeSighting sighting)
    {
        var code = layout.Code;
        _finderMm = sighting.FinderFraction * code.SizeMm;
        var edgeMm = (code.SizeMm - _finderMm) / 2;
        _corner = new(code.XMm + edgeMm, code.YMm + edgeMm, sighting.TopLeft.XPx, sighting.TopLeft.YPx);
        _across = new((sighting.TopRight.XPx - _corner.XPx) / _finderMm, (sighting.TopRight.YPx - _corner.YPx) / _finderMm);
        _down = new((sighting.BottomLeft.XPx - _corner.XPx) / _finderMm, (sighting.BottomLeft.YPx - _corner.YPx) / _finderMm);
    }

    /// <summary>None if the sighting is that of no code: points that fall together, or seen from behind.</summary>
    public static CodePose? Of(SheetLayout layout, CodeSighting? sighting)
    {
        if (sighting is null || !(sighting.FinderFraction > 0)) return null;
        var pose = new CodePose(layout, sighting);
        var area = pose._across.XPx * pose._down.YPx - pose._across.YPx * pose._down.XPx;
        return area > 1e-6 && double.IsFinite(area) ? pose : null;
    }

    /// <summary>Pixels a millimetre near the code.</summary>
    public double Scale => Math.Sqrt(_across.XPx * _down.YPx - _across.YPx * _down.XPx);

    /// <summary>The middle of the code on the form.</summary>
    public (double XMm, double YMm) Middle => (_corner.XMm + _finderMm / 2, _corner.YMm + _finderMm / 2);

    /// <summary>The middles of its finder patterns.</summary>
    public IReadOnlyList<PlacedPoint> Finders =>
    [
        _corner,
        new(_corner.XMm + _finderMm, _corner.YMm, _corner.XPx + _finderMm * _across.XPx, _corner.YPx + _finderMm * _across.YPx),
        new(_corner.XMm, _corner.YMm + _finderMm, _corner.XPx + _finderMm * _down.XPx, _corner.YPx + _finderMm * _down.YPx),
    ];

    public PixelPoint At(double xMm, double yMm)
    {
        var (x, y) = (xMm - _corner.XMm, yMm - _corner.YMm);
        return new(_corner.XPx + x * _across.XPx + y * _down.XPx, _corner.YPx + x * _across.YPx + y * _down.YPx);
    }
}
