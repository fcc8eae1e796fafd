using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Pupils;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>
/// Finds the likeliest spreads together with the border, in one Newton search of a dozen passes or two. What the determinant of the border's information
/// adds to the spreads' slopes is seen from both sides once the search is nearly there, and the search then goes on.
/// </summary>
internal sealed class JointSearch(BorderSearch search, BorderDesign design, TableSizes sizes, ResponseOptions options, ScaleAxis[] axes, Action<double> progress)
{
    private const int MostRounds = 40;

    private int _rounds;

    /// <summary>The peak.</summary>
    /// <param name="near">One of nearly the same trials, to begin with.</param>
    /// <param name="givenTilt">What the determinant adds, where it is known well enough from part of the pupils; none to find it.</param>
    public ScalePeak Find(ScalePeak? near, double[]? givenTilt = null)
    {
        double[] border = near?.Point.Border ?? search.Start, logs = near?.Logs ?? [.. axes.Select(a => a.Start)];
        var peaks = new PupilPoint([], 1, near is null ? new double[sizes.Pupils] : [.. near.Point.Pupils.Modes],
            near is null || near.Point.Pupils.Walks.Length != sizes.States ? new double[sizes.States] : [.. near.Point.Pupils.Walks]);
        var (tilt, tiltedAt, tilts) = (givenTilt ?? new double[axes.Length], givenTilt is null ? null : logs, 0);
        BorderRound best = default;
        Step step = default;
        var (bestValue, bestLogs, halvings, before) = (double.NegativeInfinity, logs, 0, 0.0);
        while (true)
        {
            progress(1 - 1 / (1 + _rounds / 4.0));
            var (round, value) = At(border, logs, peaks);
            // A step climbs the joint density and the spreads' evidence at once, so near the peak the evidence alone may fall a little; far from it a fall
            // means that the step was too long.
            if (best.Point is not null && !(value >= bestValue - 0.02 - 1e-7 * Math.Abs(bestValue)) && halvings < 12 && _rounds < MostRounds)
            {
                halvings++;
                step = step.Half();
                border = Moved(best.Point.Border, step.Border);
                logs = Moved(bestLogs, step.Logs);
                continue;
            }
            before = halvings == 0 ? step.DistanceSd : 0;
            (best, bestValue, bestLogs, halvings) = (round, value, logs, 0);
            step = StepFrom(round, logs, tilt);
            // The tilt is taken once nearly there, and again where the search has gone on since by so much that it could matter.
            var isDue = givenTilt is null && axes.Length > 0 && tilts < 4
                && (tiltedAt is null ? step.BorderSd < 0.05 && step.Gain < 0.01 : step.IsThere(options) && IsFar(tiltedAt, logs, step));
            if (isDue)
            {
                (tilt, tiltedAt, tilts) = (Tilt(round, logs, step, peaks), logs, tilts + 1);
                step = StepFrom(round, logs, tilt);
            }
            var isTilted = tiltedAt is not null || axes.Length == 0;
            if ((isTilted && step.IsThere(options)) || _rounds >= MostRounds) break;
            border = Moved(round.Point.Border, step.Border);
            logs = Moved(logs, step.Logs);
            if (!isTilted || isDue || (givenTilt is null && tiltedAt is not null && IsFar(tiltedAt, logs, step)) || !(search.Foreseen(before, step.DistanceSd) is var left && left < options.ToleranceSd)) continue;
            // What the last step leaves is foreseen to be too little for another look.
            var scales = ScalesAt(bestLogs = logs);
            bestValue += step.DistanceSd * step.DistanceSd / 2;
            best = best with { Point = round.Point with { Scales = scales, Border = border, Pupils = round.Point.Pupils with { Rows = design.RowsOf(border), Sd = scales.Ability } } };
            step = step with { BorderSd = left };
            break;
        }
        var point = best.Point with { DistanceSd = step.BorderSd };
        var isAtEdge = bestLogs.Where((l, a) => l <= axes[a].Low + 1e-9 || l >= axes[a].High - 1e-9).Any();
        return new(bestLogs, point, bestValue, step.Covariance, [.. axes.Select((_, a) => Sides(point, bestLogs, a, step))], isAtEdge, _rounds < MostRounds, _rounds) { Tilt = tilt };
    }

    /// <summary>Whether the spreads have moved by more than one hundredth of a standard error: how the determinant pulls at them has then to be looked at again.</summary>
    private bool IsFar(double[] from, double[] to, Step step) =>
        from.Where((x, a) => Math.Abs(x - to[a]) > Math.Max(0.01, options.SpreadToleranceSd) * Math.Sqrt(step.Covariance[a, a])).Any();

    private static double[] Moved(double[] from, double[] by) => [.. from.Select((x, k) => x + by[k])];

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var k = 0; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    private (BorderRound Round, double Value) At(double[] border, double[] logs, PupilPoint peaks)
    {
        _rounds++;
        var scales = ScalesAt(logs);
        var round = search.Evaluate(border, peaks with { Rows = design.RowsOf(border), Sd = scales.Ability }, scales, _rounds);
        return (round, round.Point.LogEvidence + axes.Select((a, i) => a.LogDensity(logs[i])).Sum());
    }

    private Scales ScalesAt(double[] logs)
    {
        var scales = new Scales(options.AbilitySdLogits ?? 1, options.ResidualSdLogits ?? 1);
        for (var a = 0; a < axes.Length; a++) scales = axes[a].With(scales, logs[a]);
        return scales;
    }

    /// <summary>Newton's step for border and spreads together.</summary>
    private Step StepFrom(BorderRound round, double[] logs, double[] tilt)
    {
        var n = axes.Length;
        var point = round.Point;
        var (gradient, own, cross) = (new double[n], new double[n], new double[n][]);
        for (var a = 0; a < n; a++)
        {
            (gradient[a], own[a], cross[a]) = axes[a].IsAbility ? (point.Slopes.Ability, round.SpreadCurvature, round.SpreadCross) : Residual(point);
            gradient[a] += tilt[a] + axes[a].LogDensitySlope(logs[a]);
            if (axes[a].Prior is { } prior) own[a] += 1 / (prior.LogSd * prior.LogSd);
        }
        var plain = point.Factor.Solve(round.Gradient);
        var follow = cross.Select(c => point.Factor.Solve(c)).ToArray();
        var profile = new double[n, n];
        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b < n; b++) profile[a, b] = (a == b ? own[a] : 0) - Dot(cross[a], follow[b]);
            // Far from the peak the curvature may be of no use; what is assumed then has to do.
            if (profile[a, a] <= 0) profile[a, a] = own[a] > 0 ? own[a] : 1 / (axes[a].Width * axes[a].Width);
            gradient[a] -= Dot(cross[a], plain);
        }
        for (var a = 0; a < n; a++)
        {
            // At the end of its range and pulled beyond it a spread stays, and the other moves as if it were alone.
            var isHeld = (logs[a] <= axes[a].Low + 1e-9 && gradient[a] < 0) || (logs[a] >= axes[a].High - 1e-9 && gradient[a] > 0);
            if (!isHeld) continue;
            gradient[a] = 0;
            for (var b = 0; b < n; b++) if (b != a) profile[a, b] = profile[b, a] = 0;
        }
        if (!ScaleSearch.IsPositive(profile))
        {
            profile = new double[n, n];
            for (var a = 0; a < n; a++) profile[a, a] = 1 / (axes[a].Width * axes[a].Width);
        }
        var covariance = ScaleSearch.Inverse(profile);
        var (moves, border) = (new double[n], (double[])plain.Clone());
        var gain = 0.0;
        for (var a = 0; a < n; a++)
            for (var b = 0; b < n; b++) moves[a] += covariance[a, b] * gradient[b];
        var longest = moves.Select(Math.Abs).DefaultIfEmpty(0).Max();
        for (var a = 0; a < n; a++)
        {
            moves[a] = Math.Clamp(moves[a] * Math.Min(1, 0.7 / Math.Max(longest, 0.7)), axes[a].Low - logs[a], axes[a].High - logs[a]);
            gain += Math.Abs(moves[a] * gradient[a]) / 2;
            for (var k = 0; k < border.Length; k++) border[k] -= follow[a][k] * moves[a];
        }
        return new(border, moves, Math.Sqrt(Math.Abs(Dot(plain, round.Gradient))), gain, covariance, follow);
    }

    /// <summary>Slope, curvature and cross information of the residuals' spread: from what is assumed and the determinant, no pass needed.</summary>
    private (double Slope, double Curvature, double[] Cross) Residual(BorderPoint point)
    {
        var (levels, first, size) = (design.Layout.Levels, design.Columns.Count, design.Size);
        var precision = design.Prior.ResidualPrecision(point.Scales.Residual);
        // How much of each residual's doubt is what was assumed: the covariance times the precision.
        var share = new double[levels * levels];
        double trace = 0, square = 0, form = 0;
        var cross = new double[size];
        for (var i = 0; i < levels; i++)
        {
            for (var k = 0; k < levels; k++)
            {
                var v = point.Covariance[(first + i) * size + first + k];
                for (var j = 0; j < levels; j++) share[i * levels + j] += v * precision[k * levels + j];
                cross[first + i] -= 2 * precision[i * levels + k] * point.Border[first + k];
            }
            form -= cross[first + i] * point.Border[first + i] / 2;
        }
        for (var i = 0; i < levels; i++)
        {
            trace += share[i * levels + i];
            for (var j = 0; j < levels; j++) square += share[i * levels + j] * share[j * levels + i];
        }
        return (point.Slopes.Residual + trace, 2 * form + 2 * (trace - square), cross);
    }

    /// <summary>What the determinant does beyond what is already counted when a spread moves and the border with it.</summary>
    private double[] Tilt(BorderRound round, double[] logs, Step step, PupilPoint peaks)
    {
        var tilt = new double[axes.Length];
        for (var a = 0; a < tilt.Length; a++)
        {
            var by = Math.Min(ScaleSearch.Near, Math.Sqrt(step.Covariance[a, a]) / 2);
            BorderRound Aside(double aside)
            {
                var moved = (double[])logs.Clone();
                moved[a] += aside;
                return At(Moved(round.Point.Border, [.. step.Follow[a].Select(f => -f * aside)]), moved, peaks).Round;
            }
            var (above, below) = (Aside(by), Aside(-by));
            // Beside a slope of nearly 0 there may be no border; the tilt is then left as what is already counted.
            if (above.Gradient.Length == 0 || below.Gradient.Length == 0) continue;
            tilt[a] = -(above.Point.Factor.LogDeterminant - below.Point.Factor.LogDeterminant) / (4 * by);
            if (!axes[a].IsAbility) tilt[a] -= Residual(round.Point).Slope - round.Point.Slopes.Residual;
        }
        return tilt;
    }

    /// <summary>Where the border would be at spreads a little off: from how it follows, no pass needed.</summary>
    private (BorderPoint Above, BorderPoint Below) Sides(BorderPoint point, double[] logs, int a, Step step)
    {
        BorderPoint Side(double by)
        {
            var moved = (double[])logs.Clone();
            moved[a] += by;
            var border = Moved(point.Border, [.. step.Follow[a].Select(f => -f * by)]);
            var scales = ScalesAt(moved);
            return point with { Scales = scales, Border = border, Pupils = point.Pupils with { Rows = design.RowsOf(border), Sd = scales.Ability } };
        }
        return (Side(ScaleSearch.Near), Side(-ScaleSearch.Near));
    }

    /// <summary>A step of border and spreads, how far the border still was in standard errors, what the spreads' part would gain, and how the border follows them.</summary>
    private readonly record struct Step(double[] Border, double[] Logs, double BorderSd, double Gain, double[,] Covariance, double[][] Follow)
    {
        /// <summary>Of border and spreads together.</summary>
        public double DistanceSd => Math.Sqrt(BorderSd * BorderSd + 2 * Gain);

        public bool IsThere(ResponseOptions options) => BorderSd < options.ToleranceSd && Gain < options.SpreadGain;

        public Step Half() => this with { Border = [.. Border.Select(x => x / 2)], Logs = [.. Logs.Select(x => x / 2)] };
    }
}
