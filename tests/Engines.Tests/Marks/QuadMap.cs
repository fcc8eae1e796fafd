using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>A rectangle onto four corners, in closed form: a second way to what the reader fits. Source: [Heckbert1989] 2.2.3.</summary>
internal sealed class QuadMap
{
    private readonly double[] _m;

    private QuadMap(double[] m) => _m = m;

    public static QuadMap Of(double widthMm, double heightMm, IReadOnlyList<PixelPoint> corners)
    {
        var (p, q, r, s) = (corners[0], corners[1], corners[2], corners[3]);
        var (sumX, sumY) = (p.XPx - q.XPx + r.XPx - s.XPx, p.YPx - q.YPx + r.YPx - s.YPx);
        var (x1, y1, x2, y2) = (q.XPx - r.XPx, q.YPx - r.YPx, s.XPx - r.XPx, s.YPx - r.YPx);
        var below = x1 * y2 - x2 * y1;
        var (g, h) = ((sumX * y2 - x2 * sumY) / below, (x1 * sumY - sumX * y1) / below);
        return new([
            (q.XPx - p.XPx + g * q.XPx) / widthMm, (s.XPx - p.XPx + h * s.XPx) / heightMm, p.XPx,
            (q.YPx - p.YPx + g * q.YPx) / widthMm, (s.YPx - p.YPx + h * s.YPx) / heightMm, p.YPx,
            g / widthMm, h / heightMm, 1,
        ]);
    }

    public (double X, double Y) At(double x, double y)
    {
        var w = _m[6] * x + _m[7] * y + _m[8];
        return ((_m[0] * x + _m[1] * y + _m[2]) / w, (_m[3] * x + _m[4] * y + _m[5]) / w);
    }

    /// <summary>The adjugate, which is the inverse but for a factor that falls out.</summary>
    public QuadMap Back()
    {
        double C(int a, int b, int c, int d) => _m[a] * _m[b] - _m[c] * _m[d];
        return new([
            C(4, 8, 5, 7), C(2, 7, 1, 8), C(1, 5, 2, 4),
            C(5, 6, 3, 8), C(0, 8, 2, 6), C(2, 3, 0, 5),
            C(3, 7, 4, 6), C(1, 6, 0, 7), C(0, 4, 1, 3),
        ]);
    }
}
