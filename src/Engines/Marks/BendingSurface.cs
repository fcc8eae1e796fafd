namespace Slantwise.Engines.Marks;

/// <summary>How a page is bent: smooth shifts of its places in millimetres, from shifts seen here and there.</summary>
/// <remarks>
/// Source: [EilersMarx1996] cubic B-splines on even knots with a penalty on second differences; outliers weighed down as in [HollandWelsch1977]
/// (Cauchy's weights), so that a few wrong places cannot pull it. Far from what was seen it goes on straight.
/// </remarks>
internal sealed class BendingSurface
{
    private const int Across = 7;
    private const int Down = 8;
    private const int N = Across * Down;

    // Paper rolled by 5 mm at its edges bends by about 1 mm from knot to knot, of 60 mm.
    private const double BendMm = .8;
    private const double LargestMm = 8;
    private const int RoundsAtMost = 4;

    private readonly double _widthMm, _heightMm;
    private readonly double[] _coefficients = new double[2 * N];

    private BendingSurface(double widthMm, double heightMm) => (_widthMm, _heightMm) = (widthMm, heightMm);

    /// <summary>The smoothest surface near what was seen.</summary>
    /// <param name="widthMm">The form's.</param>
    /// <param name="heightMm">The form's.</param>
    /// <param name="shifts">What was seen; none for no bend.</param>
    /// <param name="toleratedMm">Beyond this a shift counts ever less.</param>
    public static BendingSurface Of(double widthMm, double heightMm, IReadOnlyList<PlaceShift> shifts, double toleratedMm)
    {
        var surface = new BendingSurface(widthMm, heightMm);
        var penalty = Penalty();
        for (var round = 0; round < RoundsAtMost && shifts.Count > 0; round++) surface.Fit(shifts, penalty, round == 0 ? double.PositiveInfinity : toleratedMm);
        return surface;
    }

    /// <summary>The shift of a place.</summary>
    public (double DxMm, double DyMm) At(double xMm, double yMm)
    {
        Span<double> weights = stackalloc double[16];
        var first = Weights(xMm, yMm, weights);
        double dx = 0, dy = 0;
        for (var j = 0; j < 4; j++)
        {
            for (var i = 0; i < 4; i++)
            {
                var (at, weight) = (first + j * Across + i, weights[4 * j + i]);
                dx += weight * _coefficients[at];
                dy += weight * _coefficients[N + at];
            }
        }
        return (dx, dy);
    }

    private void Fit(IReadOnlyList<PlaceShift> shifts, double[] penalty, double toleratedMm)
    {
        const int width = N + 2;
        var rows = new double[N * width];
        for (var i = 0; i < N; i++) penalty.AsSpan(i * N, N).CopyTo(rows.AsSpan(i * width, N));
        Span<double> weights = stackalloc double[16];
        foreach (var shift in shifts)
        {
            var (dx, dy) = At(shift.XMm, shift.YMm);
            var off = double.Hypot(shift.DxMm - dx, shift.DyMm - dy) / Math.Max(toleratedMm, shift.SpreadMm);
            var trust = 1 / (shift.SpreadMm * shift.SpreadMm * (1 + off * off));
            var first = Weights(shift.XMm, shift.YMm, weights);
            for (var a = 0; a < 16; a++)
            {
                var (row, weighted) = (first + a / 4 * Across + a % 4, trust * weights[a]);
                for (var b = 0; b < 16; b++) rows[row * width + first + b / 4 * Across + b % 4] += weighted * weights[b];
                rows[row * width + N] += weighted * shift.DxMm;
                rows[row * width + N + 1] += weighted * shift.DyMm;
            }
        }
        LinearEquations.Solve(rows, N, _coefficients);
    }

    private static double[] Penalty()
    {
        var penalty = new double[N * N];
        for (var i = 0; i < N; i++) penalty[i * N + i] = 1 / (LargestMm * LargestMm);
        for (var y = 0; y < Down; y++)
        {
            for (var x = 0; x < Across; x++)
            {
                if (x + 2 < Across) AddBend(penalty, y * Across + x, 1);
                if (y + 2 < Down) AddBend(penalty, y * Across + x, Across);
            }
        }
        return penalty;
    }

    private static void AddBend(double[] penalty, int first, int step)
    {
        ReadOnlySpan<double> bend = [1, -2, 1];
        for (var i = 0; i < 3; i++)
            for (var j = 0; j < 3; j++)
                penalty[(first + i * step) * N + first + j * step] += bend[i] * bend[j] / (BendMm * BendMm);
    }

    // The sixteen splines that reach a place, and the number of the first.
    private int Weights(double xMm, double yMm, Span<double> weights)
    {
        Span<double> across = stackalloc double[4], down = stackalloc double[4];
        var left = Splines(xMm / _widthMm * (Across - 3), Across - 4, across);
        var top = Splines(yMm / _heightMm * (Down - 3), Down - 4, down);
        for (var j = 0; j < 4; j++)
            for (var i = 0; i < 4; i++)
                weights[4 * j + i] = across[i] * down[j];
        return top * Across + left;
    }

    private static int Splines(double at, int last, Span<double> weights)
    {
        at = Math.Clamp(at, 0, last + 1);
        var left = Math.Min((int)at, last);
        var t = at - left;
        var rest = 1 - t;
        weights[0] = rest * rest * rest / 6;
        weights[1] = (3 * t * t * t - 6 * t * t + 4) / 6;
        weights[2] = (3 * rest * rest * rest - 6 * rest * rest + 4) / 6;
        weights[3] = t * t * t / 6;
        return left;
    }
}
