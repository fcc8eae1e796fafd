using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures.Figures;

/// <summary>From the floor's frame, in statures, to a drawing in millimetres, and back in the plane of the view.</summary>
/// <param name="View">From where.</param>
/// <param name="IsFromBehind">Whether the view is turned by half a turn: the posture looks back (−X).</param>
/// <param name="StatureMm">The scale: how long one stature across the view is drawn.</param>
/// <param name="OriginXMm">Where the floor's origin lies, from the left.</param>
/// <param name="OriginYMm">Where the floor's origin lies, from the top.</param>
/// <remarks>Parallel rays: near and far parts are drawn in one scale.</remarks>
public sealed record FigureFrame(FigureView View, bool IsFromBehind, double StatureMm, double OriginXMm, double OriginYMm)
{
    /// <summary>How far the three-quarter view is turned from the front.</summary>
    public const double QuarterTurnDeg = 40;

    /// <summary>How far above the floor it looks from.</summary>
    public const double QuarterHeightDeg = 18;

    // What points to the right, up and at the viewer.
    private readonly (Point3 Right, Point3 Up, Point3 Viewer) _axes = Axes(View, IsFromBehind);

    /// <summary>Where a point is drawn.</summary>
    /// <param name="point">In the floor's frame.</param>
    /// <returns>From the left, from the top, and towards the viewer, all in millimetres.</returns>
    public (double XMm, double YMm, double DepthMm) At(Point3 point) => (
        OriginXMm + StatureMm * Dot(_axes.Right, point),
        OriginYMm - StatureMm * Dot(_axes.Up, point),
        StatureMm * Dot(_axes.Viewer, point));

    /// <summary>The move in the plane of the view that is drawn as a given one.</summary>
    /// <param name="rightMm">To the right.</param>
    /// <param name="downMm">Down.</param>
    public Point3 Move(double rightMm, double downMm) => rightMm / StatureMm * _axes.Right + -downMm / StatureMm * _axes.Up;

    /// <summary>A ball of flesh as it is seen. Flesh gives: none of it is drawn below the floor.</summary>
    internal Round Ball(Point3 centre, double radiusH)
    {
        var (xMm, yMm, depthMm) = At(centre with { ZH = Math.Max(centre.ZH, radiusH) });
        return new Round(xMm, yMm, radiusH * StatureMm, depthMm);
    }

    internal FigureAxis Axis(Point3 vector) => new(
        StatureMm * Dot(_axes.Right, vector), -StatureMm * Dot(_axes.Up, vector), StatureMm * Dot(_axes.Viewer, vector));

    internal Spot Spot(Point3 point)
    {
        var (xMm, yMm, _) = At(point);
        return new Spot(xMm, yMm);
    }

    private static (Point3 Right, Point3 Up, Point3 Viewer) Axes(FigureView view, bool isFromBehind)
    {
        var (turnRad, heightRad) = view switch
        {
            FigureView.Side => (Math.PI / 2, 0.0),
            FigureView.Front => (0.0, 0.0),
            _ => (QuarterTurnDeg * Math.PI / 180, QuarterHeightDeg * Math.PI / 180),
        };
        if (isFromBehind) turnRad += Math.PI;
        var (across, along) = Math.SinCos(turnRad);
        var (up, level) = Math.SinCos(heightRad);
        return (new(across, along, 0), new(-up * along, up * across, level), new(level * along, -level * across, up));
    }

    private static double Dot(Point3 a, Point3 b) => a.XH * b.XH + a.YH * b.YH + a.ZH * b.ZH;
}
