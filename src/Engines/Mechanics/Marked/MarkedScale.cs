namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>How large the body is on the picture, from its marked segments. Nobody's height is asked.</summary>
/// <param name="PxPerH">Points of the picture to one stature.</param>
/// <param name="Lengths">Each segment that was marked at both ends.</param>
public sealed record MarkedScale(double PxPerH, IReadOnlyList<MarkedLength> Lengths)
{
    // No feet: they are short, and turned out more often than not.
    private static readonly (Landmark From, Landmark To, double TableH)[] Limbs =
    [
        (Landmark.Shoulder, Landmark.Elbow, BodyLengths.UpperArmH),
        (Landmark.Elbow, Landmark.Wrist, BodyLengths.ForearmH),
        (Landmark.Hip, Landmark.Knee, BodyLengths.ThighH),
        (Landmark.Knee, Landmark.Ankle, BodyLengths.ShankH),
    ];

    /// <summary>The scale of a picture.</summary>
    /// <param name="points">The marks, with at least one segment of the table marked at both ends and not of length 0.</param>
    /// <returns>
    /// The sum of the marked lengths over the sum of the table's, of the segments within a fifth of their median: a limb that points
    /// towards the camera, or a slip, does not change the scale of the rest.
    /// </returns>
    /// <exception cref="ArgumentException">No segment is marked at both ends.</exception>
    public static MarkedScale Of(IReadOnlyList<MarkedPoint> points)
    {
        return Of(MarkedBody.Of(points, [])).Scale;
    }

    // With the scale, how it changes when each point moves: errors of clicking reach every length through it.
    internal static (MarkedScale Scale, PointPx[] SlopesPx) Of(MarkedBody body)
    {
        var found = Found(body).Where(f => f.Length.LengthPx > 0).OrderBy(f => f.Length.LengthPx / f.Length.TableH).ToList();
        if (found.Count == 0) throw new ArgumentException("A scale needs at least one segment marked at both ends.", "points");
        var middlePxPerH = Median([.. found.Select(f => f.Length)]);
        var kept = found.Where(f => f.Length.LengthPx / f.Length.TableH / middlePxPerH is > .8 and < 1.25).ToList();
        var tableH = kept.Sum(f => f.Length.TableH);
        var pxPerH = kept.Sum(f => f.Length.LengthPx) / tableH;
        var slopesPx = new PointPx[body.Points.Count];
        foreach (var way in kept.SelectMany(f => f.Way))
        {
            var alongPx = way.At(body.Points);
            if (alongPx.LengthPx == 0) continue;
            for (var i = 0; i < slopesPx.Length; i++) slopesPx[i] += way.Weights[i] / alongPx.LengthPx / tableH * alongPx;
        }
        return (new MarkedScale(pxPerH, [.. found.Select(f => f.Length with { OfTableFraction = f.Length.LengthPx / f.Length.TableH / pxPerH })]), slopesPx);
    }

    private static IEnumerable<(MarkedLength Length, MarkedPlace[] Way)> Found(MarkedBody body)
    {
        if (body.HasMark(Landmark.Shoulder) && body.HasMark(Landmark.Hip))
        {
            // A bent trunk is as long as its two pieces.
            var (shoulders, hips) = (body.Place(Landmark.Shoulder, Side.Middle), body.Place(Landmark.Hip, Side.Middle));
            yield return Along(body, Landmark.Shoulder, Landmark.Hip, Side.Middle, BodyLengths.HipToShoulderH,
                body.Mark(Landmark.Waist, Side.Middle) is { } waist ? [Way(shoulders, waist), Way(waist, hips)] : [Way(shoulders, hips)]);
        }
        foreach (var (from, to, tableH) in Limbs)
            foreach (var side in Sides(body, from, to))
                if (body.Mark(from, side) is { } a && body.Mark(to, side) is { } b)
                    yield return Along(body, from, to, side, tableH, [Way(a, b)]);
    }

    private static MarkedPlace Way(MarkedPlace from, MarkedPlace to) => MarkedPlace.Sum((1, to), (-1, from));

    private static (MarkedLength, MarkedPlace[]) Along(MarkedBody body, Landmark from, Landmark to, Side side, double tableH, MarkedPlace[] way) =>
        (new MarkedLength(from, to, side, way.Sum(w => w.At(body.Points).LengthPx), tableH, 1), way);

    private static Side[] Sides(MarkedBody body, Landmark from, Landmark to) =>
        body.IsBoth(from) && body.IsBoth(to) ? [Side.Middle] : [Side.Left, Side.Right];

    // Of the table's length, not of the number of segments: a trunk says more than a foot.
    private static double Median(MarkedLength[] sorted)
    {
        var (half, sum) = (sorted.Sum(l => l.TableH) / 2, 0.0);
        foreach (var length in sorted)
            if ((sum += length.TableH) >= half) return length.LengthPx / length.TableH;
        return sorted[^1].LengthPx / sorted[^1].TableH;
    }
}
