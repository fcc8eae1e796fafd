namespace Slantwise.Engines.Mechanics;

/// <summary>The shares of a rigid body on equally stiff points that cannot pull.</summary>
/// <remarks>
/// The body sinks as a plane: each point carries what the plane is below it, and nothing where it is above. The plane is the maximum of a
/// concave function of three numbers, found by Newton's method with halved steps. Source: [Gill1991] section 5.1.
/// </remarks>
internal static class EqualStiffness
{
    private const int RoundsAtMost = 200;

    /// <summary>Fills the shares of the contacts, each the sum of its points'; the points must be able to hold the centre.</summary>
    public static void Share(ReadOnlySpan<Point2> points, ReadOnlySpan<int> contacts, Point2 centre, Span<double> shares)
    {
        var plane = new Plane(1.0 / points.Length, 0, 0);
        for (var round = 0; round < RoundsAtMost; round++)
        {
            // What is still missing of a unit load at the centre, and the stiffness of the points that carry.
            var (missing, front, left) = (1.0, 0.0, 0.0);
            var (count, sumX, sumY, sumXX, sumXY, sumYY) = (1e-12, 0.0, 0.0, 1e-12, 0.0, 1e-12);
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

            // Cholesky of the 3 × 3 stiffness, by hand.
            var l11 = Math.Sqrt(count);
            var (l21, l31) = (sumX / l11, sumY / l11);
            var l22 = Math.Sqrt(sumXX - l21 * l21);
            var l32 = (sumXY - l21 * l31) / l22;
            var l33 = Math.Sqrt(sumYY - l31 * l31 - l32 * l32);
            var a = missing / l11;
            var b = (front - l21 * a) / l22;
            var c = (left - l31 * a - l32 * b) / l33;
            var dy = c / l33;
            var dx = (b - l32 * dy) / l22;
            var dz = (a - l21 * dx - l31 * dy) / l11;

            var (now, rise) = (plane.Height(points, centre), missing * dz + front * dx + left * dy);
            var step = 1.0;
            while (step > 1e-9 && plane.Moved(step, dz, dx, dy).Height(points, centre) < now + 1e-4 * step * rise) step /= 2;
            plane = plane.Moved(step, dz, dx, dy);
        }
        for (var i = 0; i < points.Length; i++)
            shares[contacts[i]] += Math.Max(0, plane.Depth(points[i].XH - centre.XH, points[i].YH - centre.YH));
    }

    // How deep the body sinks below the centre, and how the depth grows to the front and to the left; loads in body weights.
    private readonly record struct Plane(double CentreDepth, double FrontSlope, double LeftSlope)
    {
        public double Depth(double x, double y) => CentreDepth + FrontSlope * x + LeftSlope * y;

        public Plane Moved(double step, double depth, double front, double left) =>
            new(CentreDepth + step * depth, FrontSlope + step * front, LeftSlope + step * left);

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
