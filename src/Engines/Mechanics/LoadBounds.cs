namespace Slantwise.Engines.Mechanics;

/// <summary>What statics alone says of each contact: the least and the most that it may carry.</summary>
/// <remarks>
/// Reactions of 0 or more in equilibrium form a polytope whose corners have at most three points that carry, so the bounds are found
/// by looking at every point, every pair in line with the centre and every triangle around it. Source: [Dantzig1963] ch. 4.
/// </remarks>
internal static class LoadBounds
{
    // A millionth of a stature, a few micrometres: nearer than that counts as on the line.
    private const double OnLineH = 1e-6;

    /// <summary>Fills the bounds; false where nothing holds the centre.</summary>
    public static bool Find(ReadOnlySpan<Point2> points, ReadOnlySpan<int> contacts, Point2 centre, Span<double> least, Span<double> most)
    {
        least.Fill(double.PositiveInfinity);
        most.Clear();
        Span<double> corner = least.Length <= 64 ? stackalloc double[least.Length] : new double[least.Length];
        corner.Clear();
        var isHeld = false;
        for (var i = 0; i < points.Length; i++)
        {
            if ((points[i] - centre).LengthH <= OnLineH)
            {
                corner[contacts[i]] = 1;
                isHeld = Take(corner, least, most);
            }
            for (var j = i + 1; j < points.Length; j++)
            {
                if (OnSegment(points[i], points[j], centre, out var atFraction))
                {
                    corner[contacts[i]] += 1 - atFraction;
                    corner[contacts[j]] += atFraction;
                    isHeld = Take(corner, least, most);
                }
                var opposite = Point2.Turn(points[i], points[j], centre);
                for (var k = j + 1; k < points.Length; k++)
                {
                    var twice = Point2.Turn(points[i], points[j], points[k]);
                    if (Math.Abs(twice) < OnLineH * OnLineH) continue;
                    var third = opposite / twice;
                    if (third < 0) continue;
                    var first = Point2.Turn(centre, points[j], points[k]) / twice;
                    var second = 1 - first - third;
                    if (first < 0 || second < 0) continue;
                    corner[contacts[i]] += first;
                    corner[contacts[j]] += second;
                    corner[contacts[k]] += third;
                    isHeld = Take(corner, least, most);
                }
            }
        }
        return isHeld;
    }

    // Takes a corner of the polytope into the bounds and empties it for the next.
    private static bool Take(Span<double> corner, Span<double> least, Span<double> most)
    {
        for (var i = 0; i < corner.Length; i++)
        {
            least[i] = Math.Min(least[i], corner[i]);
            most[i] = Math.Max(most[i], corner[i]);
            corner[i] = 0;
        }
        return true;
    }

    private static bool OnSegment(Point2 a, Point2 b, Point2 centre, out double atFraction)
    {
        var (along, to) = (b - a, centre - a);
        var lengthH = along.LengthH;
        atFraction = 0;
        if (lengthH <= OnLineH || Math.Abs(Point2.Turn(a, b, centre)) > OnLineH * lengthH) return false;
        atFraction = (along.XH * to.XH + along.YH * to.YH) / (lengthH * lengthH);
        return atFraction is >= 0 and <= 1;
    }
}
