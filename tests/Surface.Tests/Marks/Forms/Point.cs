namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>A place on paper, in millimetres.</summary>
internal readonly record struct Point(double XMm, double YMm)
{
    public static Point operator +(Point a, Point b) => new(a.XMm + b.XMm, a.YMm + b.YMm);

    public static Point operator -(Point a, Point b) => new(a.XMm - b.XMm, a.YMm - b.YMm);

    public static Point operator *(double factor, Point a) => new(factor * a.XMm, factor * a.YMm);

    public double LengthMm => Math.Sqrt(XMm * XMm + YMm * YMm);

    public Point Turned(double rad)
    {
        var (sin, cos) = Math.SinCos(rad);
        return new(XMm * cos - YMm * sin, XMm * sin + YMm * cos);
    }
}
