namespace Slantwise.Engines.Mechanics;

/// <summary>A point on the floor.</summary>
/// <param name="XH">To the front, in statures (H).</param>
/// <param name="YH">To the left, in statures (H).</param>
public readonly record struct Point2(double XH, double YH)
{
    /// <summary>The vector from one point to another.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.XH - b.XH, a.YH - b.YH);

    /// <summary>A point moved by a vector.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.XH + b.XH, a.YH + b.YH);

    /// <summary>A vector stretched.</summary>
    public static Point2 operator *(double factorCount, Point2 a) => new(factorCount * a.XH, factorCount * a.YH);

    /// <summary>The length of the vector from the origin, in statures.</summary>
    public double LengthH => Math.Sqrt(XH * XH + YH * YH);

    /// <summary>Twice the signed area of the triangle a, b, c: more than 0 where it turns left, in square statures.</summary>
    internal static double Turn(Point2 a, Point2 b, Point2 c) => (b.XH - a.XH) * (c.YH - a.YH) - (b.YH - a.YH) * (c.XH - a.XH);
}
