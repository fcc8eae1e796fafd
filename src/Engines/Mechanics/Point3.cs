namespace Slantwise.Engines.Mechanics;

/// <summary>A point or vector in space.</summary>
/// <param name="XH">To the front, in statures (H).</param>
/// <param name="YH">To the left, in statures (H).</param>
/// <param name="ZH">Up, in statures (H).</param>
public readonly record struct Point3(double XH, double YH, double ZH)
{
    /// <summary>The sum of two vectors.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.XH + b.XH, a.YH + b.YH, a.ZH + b.ZH);

    /// <summary>The vector from b to a.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.XH - b.XH, a.YH - b.YH, a.ZH - b.ZH);

    /// <summary>A vector stretched.</summary>
    public static Point3 operator *(double factorCount, Point3 a) => new(factorCount * a.XH, factorCount * a.YH, factorCount * a.ZH);

    /// <summary>The length of the vector, in statures.</summary>
    public double LengthH => Math.Sqrt(Dot(this, this));

    /// <summary>The point straight below on the floor.</summary>
    public Point2 OnFloor => new(XH, YH);

    internal static double Dot(Point3 a, Point3 b) => a.XH * b.XH + a.YH * b.YH + a.ZH * b.ZH;

    internal static Point3 Cross(Point3 a, Point3 b) => new(
        a.YH * b.ZH - a.ZH * b.YH, a.ZH * b.XH - a.XH * b.ZH, a.XH * b.YH - a.YH * b.XH);
}
