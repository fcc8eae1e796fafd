namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>The centre of mass of marked segments on a picture.</summary>
public static class MarkedCentre
{
    /// <summary>The mean of the segments' centres, each weighted by its mass, paired ones taken on both sides.</summary>
    /// <param name="points">The marks; every point that a segment names is marked, on one side or on both.</param>
    /// <param name="segments">The segments of a body, or of a part of one.</param>
    /// <returns>On the picture, whichever way it is turned.</returns>
    /// <exception cref="ArgumentException">No segment; a point that is not marked.</exception>
    public static PointPx Of(IReadOnlyList<MarkedPoint> points, IReadOnlyList<MarkedSegment> segments)
    {
        if (segments.Count == 0) throw new ArgumentException("At least one segment is needed.", nameof(segments));
        foreach (var landmark in segments.SelectMany(s => new[] { s.From, s.To }))
            if (points.All(p => p.Landmark != landmark)) throw new ArgumentException($"{landmark} is not marked.", nameof(points));
        var body = MarkedBody.Of(points, []);
        return Of(body, segments).At(body.Points);
    }

    internal static MarkedPlace Of(MarkedBody body, IReadOnlyList<MarkedSegment> segments)
    {
        var whole = segments.Sum(s => (s.IsPaired ? 2 : 1) * s.MassFraction);
        var parts = new List<(double, MarkedPlace)>();
        foreach (var segment in segments)
            foreach (var side in segment.IsPaired ? new[] { Side.Left, Side.Right } : [Side.Middle])
                parts.Add((segment.MassFraction / whole, MarkedPlace.Between(body.Place(segment.From, side), body.Place(segment.To, side), segment.CentreFraction)));
        return MarkedPlace.Sum(parts.ToArray());
    }
}
