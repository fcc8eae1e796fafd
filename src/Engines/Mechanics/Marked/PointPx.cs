namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A place on a picture, in the picture's own points.</summary>
/// <param name="XPx">From the left edge.</param>
/// <param name="YPx">From the top edge, downwards.</param>
public readonly record struct PointPx(double XPx, double YPx)
{
    /// <summary>The sum of two vectors.</summary>
    public static PointPx operator +(PointPx a, PointPx b) => new(a.XPx + b.XPx, a.YPx + b.YPx);

    /// <summary>The vector from b to a.</summary>
    public static PointPx operator -(PointPx a, PointPx b) => new(a.XPx - b.XPx, a.YPx - b.YPx);

    /// <summary>A vector stretched.</summary>
    public static PointPx operator *(double factorCount, PointPx a) => new(factorCount * a.XPx, factorCount * a.YPx);

    /// <summary>The length of the vector.</summary>
    public double LengthPx => Math.Sqrt(XPx * XPx + YPx * YPx);

    internal bool IsFinite => double.IsFinite(XPx) && double.IsFinite(YPx);

    internal static double Dot(PointPx a, PointPx b) => a.XPx * b.XPx + a.YPx * b.YPx;
}
