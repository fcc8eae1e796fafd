namespace Slantwise.Engines.Marks;

/// <summary>How a flat page looks from somewhere: straight lines stay straight.</summary>
/// <remarks>
/// Source: [HartleyZisserman2004] ch. 4, the direct linear transformation on points shifted and scaled to size 1; weighted anew by each point's
/// depth, so that what is made small is the distance in the picture.
/// </remarks>
internal sealed class Homography
{
    private readonly double[] _m;

    private Homography(double[] m) => _m = m;

    public PixelPoint At(double x, double y)
    {
        var depth = _m[6] * x + _m[7] * y + _m[8];
        return new((_m[0] * x + _m[1] * y + _m[2]) / depth, (_m[3] * x + _m[4] * y + _m[5]) / depth);
    }

    /// <summary>How far a place is from the eye, to a scale; of one sign wherever the page can be seen.</summary>
    public double Depth(double x, double y) => _m[6] * x + _m[7] * y + _m[8];

    /// <summary>Pixels a millimetre at a place: the root of how much areas grow. Negative where the page would be seen from behind.</summary>
    public double Scale(double x, double y)
    {
        // The determinant of the slopes is that of the matrix over the third power of the depth.
        var depth = Depth(x, y);
        var grow = Determinant() / (depth * depth * depth);
        return Math.Sign(grow) * Math.Sqrt(Math.Abs(grow));
    }

    /// <summary>The way back; none if all falls together.</summary>
    public Homography? Back()
    {
        var m = _m;
        if (Math.Abs(Determinant()) < 1e-12) return null;
        return new([
            m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3],
        ]);
    }

    /// <summary>The map nearest to what was seen.</summary>
    /// <param name="points">Four or more, no three of the four in a line.</param>
    /// <returns>None where the points do not fix it.</returns>
    public static Homography? Of(ReadOnlySpan<PlacedPoint> points)
    {
        if (points.Length < 4) return null;
        var (onForm, inPicture) = (Frame.Of(points, isForm: true), Frame.Of(points, isForm: false));
        Span<double> equations = stackalloc double[8 * 9];
        Span<double> h = stackalloc double[8];
        h.Clear();
        for (var round = 0; round < (points.Length == 4 ? 1 : 3); round++)
        {
            equations.Clear();
            foreach (var p in points) AddEquations(p, onForm, inPicture, h, equations);
            if (!LinearEquations.Solve(equations, 8, h)) return null;
        }
        return new(Unframed(h, onForm, inPicture));
    }

    private static void AddEquations(PlacedPoint p, Frame onForm, Frame inPicture, ReadOnlySpan<double> h, Span<double> equations)
    {
        double x = (p.XMm - onForm.X) * onForm.Scale, y = (p.YMm - onForm.Y) * onForm.Scale;
        double u = (p.XPx - inPicture.X) * inPicture.Scale, v = (p.YPx - inPicture.Y) * inPicture.Scale;
        var depth = 1 + h[6] * x + h[7] * y;
        var weight = p.Weight / (depth * depth);
        Add(equations, [x, y, 1, 0, 0, 0, -u * x, -u * y], u, weight);
        Add(equations, [0, 0, 0, x, y, 1, -v * x, -v * y], v, weight);
    }

    private static void Add(Span<double> equations, ReadOnlySpan<double> row, double right, double weight)
    {
        for (var i = 0; i < 8; i++)
        {
            var weighted = weight * row[i];
            if (weighted == 0) continue;
            for (var j = 0; j < 8; j++) equations[i * 9 + j] += weighted * row[j];
            equations[i * 9 + 8] += weighted * right;
        }
    }

    private static double[] Unframed(ReadOnlySpan<double> h, Frame onForm, Frame inPicture)
    {
        // First the form's frame (x - X) s, then h, then the picture's frame undone: u / t + U.
        var m = new double[9];
        for (var row = 0; row < 3; row++)
        {
            var (a, b, c) = row == 2 ? (h[6], h[7], 1.0) : (h[3 * row], h[3 * row + 1], h[3 * row + 2]);
            (m[3 * row], m[3 * row + 1]) = (a * onForm.Scale, b * onForm.Scale);
            m[3 * row + 2] = c - m[3 * row] * onForm.X - m[3 * row + 1] * onForm.Y;
        }
        for (var column = 0; column < 3; column++)
        {
            m[column] = m[column] / inPicture.Scale + inPicture.X * m[6 + column];
            m[3 + column] = m[3 + column] / inPicture.Scale + inPicture.Y * m[6 + column];
        }
        return m;
    }

    private double Determinant() =>
        _m[0] * (_m[4] * _m[8] - _m[5] * _m[7]) - _m[1] * (_m[3] * _m[8] - _m[5] * _m[6]) + _m[2] * (_m[3] * _m[7] - _m[4] * _m[6]);

    private readonly record struct Frame(double X, double Y, double Scale)
    {
        public static Frame Of(ReadOnlySpan<PlacedPoint> points, bool isForm)
        {
            double x = 0, y = 0, far = 0;
            foreach (var p in points) (x, y) = isForm ? (x + p.XMm, y + p.YMm) : (x + p.XPx, y + p.YPx);
            (x, y) = (x / points.Length, y / points.Length);
            foreach (var p in points) far += isForm ? double.Hypot(p.XMm - x, p.YMm - y) : double.Hypot(p.XPx - x, p.YPx - y);
            return new(x, y, far > 0 ? Math.Sqrt(2) * points.Length / far : 1);
        }
    }
}
