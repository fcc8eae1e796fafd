using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>Finds the likeliest pair of spreads: Newton's method on their logarithms, with curvatures from points nearby.</summary>
internal sealed class ScaleSearch(BorderSearch search, ResponseOptions options, Action<double> progress)
{
    internal const double Near = 0.04;
    private const int MostSteps = 25;

    private readonly ScaleAxis[] _axes = ScaleAxis.Of(options);
    private readonly Dictionary<(double, double), (BorderPoint Point, double Value)> _seen = [];
    private BorderPoint? _last;
    private double[][] _drift = [];
    private double[] _lastLogs = [];
    private bool _allConverged = true;

    public int Rounds { get; private set; }

    public ScaleAxis[] Axes => _axes;

    /// <summary>Begins further points from a peak found elsewhere.</summary>
    public void BeginAt(ScalePeak peak)
    {
        Remember(peak.Point, peak.Logs, peak.Sides);
        _seen[Key(peak.Logs)] = (peak.Point, peak.Value);
    }

    /// <summary>The peak.</summary>
    public ScalePeak Find()
    {
        var logs = _axes.Select(a => a.Start).ToArray();
        double[,]? curvature = null;
        var (point, value) = At(logs);
        for (var step = 0; ; step++)
        {
            progress(Math.Min(0.9, step / 6.0));
            var (gradient, sides) = Slopes(logs);
            Remember(point, logs, sides);
            // The curvature is taken twice: at the start to aim, and once nearly there to measure.
            if (step < 2) curvature = Curvature(logs, value, curvature);
            var (move, gain) = Move(logs, gradient, curvature!);
            if (gain < options.SpreadGain || step == MostSteps)
            {
                if (step < 2 || step > 4) curvature = Curvature(logs, value, curvature);
                return new(logs, point, value, Inverse(curvature!), sides, IsAtEdge(logs), _allConverged && step < MostSteps, Rounds);
            }
            for (var halving = 0; ; halving++)
            {
                var next = logs.Zip(move, (l, m) => l + m).ToArray();
                var (nextPoint, nextValue) = At(next);
                if (nextValue > value - 1e-6 || halving == 8)
                {
                    (logs, point, value) = (next, nextPoint, nextValue);
                    break;
                }
                for (var a = 0; a < move.Length; a++) move[a] /= 2;
            }
        }
    }

    /// <summary>The border at given spreads, started from where the last peak would have it.</summary>
    /// <param name="logs">Logarithm of each estimated spread.</param>
    /// <param name="isForeseen">Whether the last step may be taken unseen.</param>
    public (BorderPoint Point, double Value) At(double[] logs, bool isForeseen = false)
    {
        var key = Key(logs);
        if (_seen.TryGetValue(key, out var known)) return known;

        var scales = new Scales(options.AbilitySdLogits ?? 1, options.ResidualSdLogits ?? 1);
        for (var a = 0; a < _axes.Length; a++) scales = _axes[a].With(scales, logs[a]);
        var start = _last is null ? search.Start : [.. _last.Border];
        for (var a = 0; a < _drift.Length; a++)
            for (var k = 0; k < start.Length; k++) start[k] += _drift[a][k] * (logs[a] - _lastLogs[a]);
        var point = search.At(scales, start, _last?.Pupils, isForeseen);
        Rounds += point.Rounds;
        _allConverged &= point.DistanceSd < options.ToleranceSd;
        _last ??= point;
        if (_lastLogs.Length == 0) _lastLogs = logs;
        var value = (options.IsFlat ? point.LogLikelihood : point.LogEvidence) + _axes.Select((a, i) => a.LogDensity(logs[i])).Sum();
        return _seen[key] = (point, value);
    }

    private static (double, double) Key(double[] logs) => (logs.Length > 0 ? logs[0] : 0, logs.Length > 1 ? logs[1] : 0);

    private static double[] Moved(double[] logs, int a, double by)
    {
        var moved = (double[])logs.Clone();
        moved[a] += by;
        return moved;
    }

    private (double[] Gradient, (BorderPoint, BorderPoint)[] Sides) Slopes(double[] logs)
    {
        var gradient = new double[_axes.Length];
        var sides = new (BorderPoint, BorderPoint)[_axes.Length];
        for (var a = 0; a < _axes.Length; a++)
        {
            var (above, below) = (At(Moved(logs, a, Near)), At(Moved(logs, a, -Near)));
            // The border stands at its peak, so it adds nothing to first order; only the determinant has to be seen from both sides.
            gradient[a] = (_axes[a].IsAbility ? At(logs).Point.Slopes.Ability : At(logs).Point.Slopes.Residual) + _axes[a].LogDensitySlope(logs[a]);
            if (!options.IsFlat) gradient[a] -= (above.Point.Factor.LogDeterminant - below.Point.Factor.LogDeterminant) / (4 * Near);
            sides[a] = (above.Point, below.Point);
        }
        return (gradient, sides);
    }

    private double[,] Curvature(double[] logs, double value, double[,]? before)
    {
        var n = _axes.Length;
        var curvature = new double[n, n];
        for (var a = 0; a < n; a++)
            curvature[a, a] = -(At(Moved(logs, a, Near)).Value - 2 * value + At(Moved(logs, a, -Near)).Value) / (Near * Near);
        if (n == 2)
        {
            // From both diagonal neighbours: the error is of second order, as in the others.
            var (up, down) = (At([logs[0] + Near, logs[1] + Near]).Value, At([logs[0] - Near, logs[1] - Near]).Value);
            var along = -(up - 2 * value + down) / (Near * Near);
            curvature[0, 1] = curvature[1, 0] = (along - curvature[0, 0] - curvature[1, 1]) / 2;
        }
        if (IsPositive(curvature)) return curvature;
        if (before is not null && IsPositive(before)) return before;
        var fallback = new double[n, n];
        for (var a = 0; a < n; a++) fallback[a, a] = 1 / (_axes[a].Width * _axes[a].Width);
        return fallback;
    }

    internal static bool IsPositive(double[,] m) => m.Length switch
    {
        0 => true,
        1 => m[0, 0] > 1e-3,
        _ => m[0, 0] > 1e-3 && m[1, 1] > 1e-3 && m[0, 0] * m[1, 1] - m[0, 1] * m[0, 1] > 1e-3 * m[0, 0] * m[1, 1],
    };

    internal static double[,] Inverse(double[,] m)
    {
        if (m.Length == 0) return m;
        if (m.Length == 1) return new[,] { { 1 / m[0, 0] } };
        var determinant = m[0, 0] * m[1, 1] - m[0, 1] * m[0, 1];
        return new[,] { { m[1, 1] / determinant, -m[0, 1] / determinant }, { -m[0, 1] / determinant, m[0, 0] / determinant } };
    }

    private (double[] Move, double Gain) Move(double[] logs, double[] gradient, double[,] curvature)
    {
        var inverse = Inverse(curvature);
        var move = new double[logs.Length];
        var gain = 0.0;
        for (var a = 0; a < move.Length; a++)
        {
            for (var b = 0; b < move.Length; b++) move[a] += inverse[a, b] * gradient[b];
            move[a] = Math.Clamp(Math.Clamp(move[a], -0.7, 0.7), _axes[a].Low - logs[a], _axes[a].High - logs[a]);
            gain += Math.Abs(move[a] * gradient[a]) / 2;
        }
        return (move, gain);
    }

    private bool IsAtEdge(double[] logs) => logs.Where((l, a) => l <= _axes[a].Low + 1e-9 || l >= _axes[a].High - 1e-9).Any();

    private void Remember(BorderPoint point, double[] logs, (BorderPoint Above, BorderPoint Below)[] sides)
    {
        (_last, _lastLogs) = (point, logs);
        _drift = [.. sides.Select(s => s.Above.Border.Zip(s.Below.Border, (x, y) => (x - y) / (2 * Near)).ToArray())];
    }
}
