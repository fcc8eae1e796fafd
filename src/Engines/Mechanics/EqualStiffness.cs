namespace Slantwise.Engines.Mechanics;

/// <summary>The shares of a rigid body on equally stiff points that cannot pull.</summary>
/// <remarks>
/// The body sinks as a plane: each point carries what the plane is below it, and nothing where it is above. The plane is the maximum of a
/// concave function of three numbers, found by Newton's method; where the points that
/// carry lie on one line and a step would go astray, it is damped until it climbs. Sources: [Gill1991] section 5.1, [Marquardt1963].
/// </remarks>
internal static class EqualStiffness
{
    private const int RoundsAtMost = 200;
    private const double LeastDamping = 1e-12;
    private const double MostDamping = 1e6;

    /// <summary>Fills the shares of the contacts, each the sum of its points'; the points must be able to hold the centre.</summary>
    public static void Share(ReadOnlySpan<Point2> points, ReadOnlySpan<int> contacts, Point2 centre, Span<double> shares)
    {
        var plane = new Plane(1.0 / points.Length, 0, 0);
        for (var round = 0; round < RoundsAtMost; round++)
        {
            // What is still missing of a unit load at the centre, and the stiffness of the points that carry.
            var (missing, front, left) = (1.0, 0.0, 0.0);
            var (count, sumX, sumY, sumXX, sumXY, sumYY) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
            foreach (var point in points)
            {
                var (x, y) = (point.XH - centre.XH, point.YH - centre.YH);
                var carried = plane.Depth(x, y);
                if (carried <= 0) continue;
                (missing, front, left) = (missing - carried, front - carried * x, left - carried * y);
                (count, sumX, sumY) = (count + 1, sumX + x, sumY + y);
                (sumXX, sumXY, sumYY) = (sumXX + x * x, sumXY + x * y, sumYY + y * y);
            }
            if (missing * missing + front * front + left * left < 1e-26) break;

            var (now, moved) = (plane.Height(points, centre), false);
            for (var damping = LeastDamping; !moved && damping <= MostDamping; damping *= 100)
            {
                // Cholesky of the damped 3 × 3 stiffness, by hand.
                var l11 = Math.Sqrt(count + damping);
                var (l21, l31) = (sumX / l11, sumY / l11);
                var l22 = Math.Sqrt(sumXX + damping - l21 * l21);
                var l32 = (sumXY - l21 * l31) / l22;
                var l33 = Math.Sqrt(sumYY + damping - l31 * l31 - l32 * l32);
                var a = missing / l11;
                var b = (front - l21 * a) / l22;
                var c = (left - l31 * a - l32 * b) / l33;
                var dy = c / l33;
                var dx = (b - l32 * dy) / l22;
                var dz = (a - l21 * dx - l31 * dy) / l11;
                var next = plane.Moved(dz, dx, dy);
                if (!(next.Height(points, centre) >= now + 1e-4 * (missing * dz + front * dx + left * dy))) continue;
                (plane, moved) = (next, true);
            }
            if (!moved) break;
        }
        for (var i = 0; i < points.Length; i++)
            shares[contacts[i]] += Math.Max(0, plane.Depth(points[i].XH - centre.XH, points[i].YH - centre.YH));
    }

    // How deep the body sinks below the centre, and how the depth grows to the front and to the left; loads in body weights.
    private readonly record struct Plane(double CentreDepth, double FrontSlope, double LeftSlope)
    {
        public double Depth(double x, double y) => CentreDepth + FrontSlope * x + LeftSlope * y;

        public Plane Moved(double depth, double front, double left) => new(CentreDepth + depth, FrontSlope + front, LeftSlope + left);

        public double Height(ReadOnlySpan<Point2> points, Point2 centre)
        {
            var squares = 0.0;
            foreach (var point in points)
            {
                var carried = Math.Max(0, Depth(point.XH - centre.XH, point.YH - centre.YH));
                squares += carried * carried;
            }
            return CentreDepth - squares / 2;
        }
    }
}
