namespace Slantwise.Engines.Mechanics;

/// <summary>The area on the floor over which a body can be held: the tightest line around everything that touches.</summary>
public sealed class BaseOfSupport
{
    private BaseOfSupport(Point2[] corners) => Corners = corners;

    /// <summary>The corners, turning left, no three on one line. One corner for a point, two for a line.</summary>
    public IReadOnlyList<Point2> Corners { get; }

    /// <summary>The base of what touches the floor.</summary>
    /// <param name="touching">Points of the outlines of all contacts, shape (n), n ≥ 1, any order, repeats allowed, on the floor.</param>
    /// <returns>The convex hull.</returns>
    /// <exception cref="ArgumentException">No point; a coordinate that is not finite.</exception>
    /// <remarks>Source: [Andrew1979], the monotone chain.</remarks>
    public static BaseOfSupport Of(ReadOnlySpan<Point2> touching)
    {
        if (touching.Length == 0) throw new ArgumentException("A base needs at least one point that touches the floor.", nameof(touching));
        foreach (var p in touching)
            if (!double.IsFinite(p.XH) || !double.IsFinite(p.YH))
                throw new ArgumentException($"A point on the floor has finite coordinates, not ({p.XH}, {p.YH}).", nameof(touching));

        Span<Point2> sorted = touching.Length <= 64 ? stackalloc Point2[touching.Length] : new Point2[touching.Length];
        touching.CopyTo(sorted);
        sorted.Sort(static (a, b) => a.XH != b.XH ? a.XH.CompareTo(b.XH) : a.YH.CompareTo(b.YH));
        sorted = sorted[..Distinct(sorted)];
        if (sorted.Length == 1) return new BaseOfSupport([sorted[0]]);

        Span<Point2> hull = sorted.Length <= 64 ? stackalloc Point2[2 * sorted.Length] : new Point2[2 * sorted.Length];
        var count = 0;
        for (var i = 0; i < sorted.Length; i++) count = Push(hull, count, 0, sorted[i]);
        var lower = count;
        for (var i = sorted.Length - 2; i >= 0; i--) count = Push(hull, count, lower - 1, sorted[i]);
        // The last corner repeats the first.
        return new BaseOfSupport(hull[..(count - 1)].ToArray());
    }

    /// <summary>The base's area in square statures; 0 for a point or a line.</summary>
    public double AreaH2
    {
        get
        {
            var twice = 0.0;
            for (var i = 2; i < Corners.Count; i++) twice += Point2.Turn(Corners[0], Corners[i - 1], Corners[i]);
            return twice / 2;
        }
    }

    /// <summary>Smallest width over greatest length, which is the longest side of a triangle: near 0 where the triangle has turned into a line.</summary>
    /// <returns>0 to 1: 0 for a point or a line, 0.866 for an equilateral triangle, 0.707 for a square, near 1 for a circle.</returns>
    public double NarrownessFraction
    {
        get
        {
            if (Corners.Count < 3) return 0;
            var (narrowestH, longestH) = (double.PositiveInfinity, 0.0);
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Count]);
                var widthH = Corners.Max(c => Point2.Turn(a, b, c)) / (b - a).LengthH;
                (narrowestH, longestH) = (Math.Min(narrowestH, widthH), Math.Max(longestH, Corners.Max(c => (c - a).LengthH)));
            }
            return narrowestH / longestH;
        }
    }

    /// <summary>Whether a point lies on the base, its sides included.</summary>
    /// <param name="point">On the floor.</param>
    /// <returns>Never for a point or a line: nothing can be held over them against the smallest error.</returns>
    public bool Contains(Point2 point)
    {
        if (Corners.Count < 3) return false;
        for (var i = 0; i < Corners.Count; i++)
            if (Point2.Turn(Corners[i], Corners[(i + 1) % Corners.Count], point) < 0) return false;
        return true;
    }

    /// <summary>How far a point has to go back, against a direction, to come onto the base.</summary>
    /// <param name="point">On the floor.</param>
    /// <param name="direction">Of length 1.</param>
    /// <returns>0 on the base; NaN where the way back misses it.</returns>
    public double DistanceBackH(Point2 point, Point2 direction)
    {
        if (Contains(point)) return 0;
        var nearestH = double.NaN;
        for (var i = 0; i < Corners.Count; i++)
        {
            var (from, along) = (Corners[i], Corners[(i + 1) % Corners.Count] - Corners[i]);
            var across = direction.XH * along.YH - direction.YH * along.XH;
            if (Math.Abs(across) < 1e-15) continue;
            var to = point - from;
            var backH = (to.XH * along.YH - to.YH * along.XH) / across;
            var atFraction = (to.YH * direction.XH - to.XH * direction.YH) / across;
            if (backH >= 0 && atFraction is >= 0 and <= 1 && !(backH >= nearestH)) nearestH = backH;
        }
        return nearestH;
    }

    private static int Distinct(Span<Point2> sorted)
    {
        var count = 1;
        for (var i = 1; i < sorted.Length; i++)
            if (sorted[i] != sorted[count - 1]) sorted[count++] = sorted[i];
        return count;
    }

    private static int Push(Span<Point2> hull, int count, int floor, Point2 point)
    {
        while (count >= floor + 2 && Point2.Turn(hull[count - 2], hull[count - 1], point) <= 0) count--;
        hull[count] = point;
        return count + 1;
    }
}
