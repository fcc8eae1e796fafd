using Slantwise.Engines.Drawing;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>Slanted lines over a piece of floor: told apart from colours when a printer makes grey of them.</summary>
internal static class FloorHatch
{
    /// <summary>The lines over a convex piece.</summary>
    /// <param name="corners">In millimetres, three or more, in order either way round; fewer give nothing.</param>
    /// <param name="stepMm">From one line to the next.</param>
    /// <param name="isFalling">Whether they fall to the right instead of rising.</param>
    public static IEnumerable<Shape> Of(IReadOnlyList<(double XMm, double YMm)> corners, double stepMm, double strokeMm, Tone tone, bool isFalling = false)
    {
        if (corners.Count < 3) yield break;
        // Lines x + y = c, or x - y = c; each crosses a convex piece in one run.
        double C((double XMm, double YMm) p) => isFalling ? p.XMm - p.YMm : p.XMm + p.YMm;
        var step = stepMm * Math.Sqrt(2);
        for (var c = Math.Ceiling((corners.Min(C) + 1e-6) / step) * step; c < corners.Max(C); c += step)
        {
            var ends = new List<(double XMm, double YMm)>();
            for (var i = 0; i < corners.Count; i++)
            {
                var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
                var (ca, cb) = (C(a) - c, C(b) - c);
                if (ca < 0 != cb < 0) ends.Add((a.XMm + ca / (ca - cb) * (b.XMm - a.XMm), a.YMm + ca / (ca - cb) * (b.YMm - a.YMm)));
            }
            if (ends.Count >= 2) yield return new Line(ends[0].XMm, ends[0].YMm, ends[1].XMm, ends[1].YMm, strokeMm, tone);
        }
    }

    /// <summary>A rectangle of the floor as corners in the drawing.</summary>
    public static IReadOnlyList<(double XMm, double YMm)> Corners(FloorRectangle place, HallScale scale) =>
    [
        (scale.XMm(place.LeftXM), scale.YMm(place.FrontYM)), (scale.XMm(place.RightXM), scale.YMm(place.FrontYM)),
        (scale.XMm(place.RightXM), scale.YMm(place.BackYM)), (scale.XMm(place.LeftXM), scale.YMm(place.BackYM)),
    ];
}
