namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>Which way is down on a picture, and how surely.</summary>
/// <param name="TiltRad">How far true level is turned clockwise on the picture from its edge, once the picture is the right way up.</param>
/// <param name="TiltSdRad">How far that may be off, as a standard deviation.</param>
/// <param name="FloorTiltRad">How far the line of what touches the floor is turned; NaN where less than two contacts say nothing about it.</param>
/// <param name="FloorSdRad">How far that line may be off; NaN with it.</param>
/// <param name="Level">Level, to the right, of length 1 on the picture.</param>
/// <param name="Down">Straight down, of length 1 on the picture.</param>
public sealed record MarkedTilt(double TiltRad, double TiltSdRad, double FloorTiltRad, double FloorSdRad, PointPx Level, PointPx Down)
{
    /// <summary>How far a picture taken by hand is out of level, as a standard deviation: 2°, own estimate.</summary>
    public const double HandHeldSdRad = 2 * Math.PI / 180;

    /// <summary>How far contacts lie higher or lower on a picture because they are nearer to the camera or farther from it: about 4 cm of 1.40 m, own estimate.</summary>
    public const double DepthSdH = .03;

    /// <summary>Whether the floor's line and the picture's edge disagree by more than both may be off together (twice their standard deviation).</summary>
    public bool IsFloorAslant => Math.Abs(FloorTiltRad) > 2 * Math.Sqrt(FloorSdRad * FloorSdRad + HandHeldSdRad * HandHeldSdRad);

    /// <summary>The direction of gravity on a picture.</summary>
    /// <param name="picture">With something upright marked where gravity is to be taken from it.</param>
    /// <param name="floor">One place on the floor a contact, shape (n), any order, with the variance of its clicks.</param>
    /// <param name="clickSdPx">The error of a click.</param>
    /// <param name="pxPerH">The picture's scale.</param>
    /// <returns>
    /// Two short prints side by side say little about level, and two hands at different depths say something false about it: so the
    /// floor's line and the picture's edge are weighed, each by the inverse of its variance, unless the caller has chosen one.
    /// </returns>
    /// <remarks>Line of least squares and the mean weighted by precision. Source: [Gelman2013] section 2.5.</remarks>
    internal static MarkedTilt Of(MarkedPicture picture, IReadOnlyList<(PointPx Place, double ClickPx2)> floor, double clickSdPx, double pxPerH)
    {
        var (sine, cosine) = (picture.QuarterTurnCount & 3) switch { 0 => (0, 1), 1 => (1, 0), 2 => (0, -1), _ => (-1, 0) };
        var (right, down) = (new PointPx(cosine, -sine), new PointPx(sine, cosine));
        if (picture is { Level: LevelBasis.Upright, Upright: { } upright })
        {
            var along = upright.Bottom - upright.Top;
            var tiltRad = Math.Atan2(-PointPx.Dot(along, right), PointPx.Dot(along, down));
            return Turned(tiltRad, Math.Sqrt(2) * clickSdPx / along.LengthPx, double.NaN, double.NaN, right, down);
        }

        var depthPx = picture.Level == LevelBasis.Floor ? 0 : DepthSdH * pxPerH;
        var (floorRad, floorSdRad) = Line(floor, right, down, depthPx, picture.Level == LevelBasis.Floor);
        if (double.IsNaN(floorRad)) return Turned(0, HandHeldSdRad, floorRad, floorSdRad, right, down);
        if (picture.Level == LevelBasis.Floor) return Turned(floorRad, floorSdRad, floorRad, floorSdRad, right, down);
        var ofFloor = HandHeldSdRad * HandHeldSdRad / (HandHeldSdRad * HandHeldSdRad + floorSdRad * floorSdRad);
        return Turned(ofFloor * floorRad, Math.Sqrt(ofFloor) * floorSdRad, floorRad, floorSdRad, right, down);
    }

    private static (double TiltRad, double SdRad) Line(
        IReadOnlyList<(PointPx Place, double ClickPx2)> floor, PointPx right, PointPx down, double depthPx, bool isAnySlant)
    {
        if (floor.Count < 2) return (double.NaN, double.NaN);
        var middle = 1.0 / floor.Count * floor.Aggregate(new PointPx(0, 0), (sum, f) => sum + f.Place);
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        foreach (var (place, _) in floor)
        {
            var (xPx, yPx) = (PointPx.Dot(place - middle, right), PointPx.Dot(place - middle, down));
            (xx, xy, yy) = (xx + xPx * xPx, xy + xPx * yPx, yy + yPx * yPx);
        }
        // A floor of any slant is fitted across its own line. One that is about level is fitted in height alone: two contacts
        // behind each other are no steep floor, they say nothing about level.
        var tiltRad = isAnySlant ? Math.Atan2(2 * xy, xx - yy) / 2 : Math.Atan2(xy, xx);
        var along = isAnySlant ? Math.Cos(tiltRad) * right + Math.Sin(tiltRad) * down : right;
        var (spreadPx2, errorPx4) = (0.0, 0.0);
        foreach (var (place, clickPx2) in floor)
        {
            var armPx = PointPx.Dot(place - middle, along);
            spreadPx2 += armPx * armPx;
            errorPx4 += armPx * armPx * (clickPx2 + depthPx * depthPx);
        }
        return spreadPx2 <= 1e-9 ? (double.NaN, double.NaN) : (tiltRad, Math.Sqrt(errorPx4) / spreadPx2);
    }

    private static MarkedTilt Turned(double tiltRad, double sdRad, double floorRad, double floorSdRad, PointPx right, PointPx down)
    {
        var (sine, cosine) = Math.SinCos(tiltRad);
        return new MarkedTilt(tiltRad, sdRad, floorRad, floorSdRad, cosine * right + sine * down, cosine * down - sine * right);
    }
}
