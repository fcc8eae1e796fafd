using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Finds the likeliest ability and walk of a pupil together.</summary>
internal sealed class WalkPeak(WalkPrecision walk, int states)
{
    private readonly double[] _states = new double[states + 1], _slopes = new double[states], _added = new double[states], _moves = new double[states];

    /// <summary>The likeliest walk: a start before, and an answer after.</summary>
    public double[] Walk { get; } = new double[states];

    /// <summary>How the walk follows ability near the peak.</summary>
    public double[] Lean { get; } = new double[states];

    /// <summary>The likeliest ability, and the curvature there with the walk following.</summary>
    /// <param name="own">The pupil's terms.</param>
    /// <param name="odds">By term, ability and walk left out.</param>
    /// <param name="precision">Of abilities beforehand.</param>
    /// <param name="start">An ability to begin with.</param>
    public (double Mode, double Curvature) Find(ReadOnlySpan<Term> own, double[] odds, double precision, double start)
    {
        var (before, curvature, ability, n) = (0.0, precision, start, walk.Count);
        for (var round = 0; round < 60; round++)
        {
            var (slope, bend) = Try(own, odds, ability);
            slope -= ability * precision;
            walk.Pull(Walk, _slopes);
            walk.Factor(_added);
            for (var k = 0; k < n; k++) (_moves[k], Lean[k]) = (_slopes[k], -_added[k]);
            walk.Solve(_moves.AsSpan(0, n));
            walk.Solve(Lean.AsSpan(0, n));
            curvature = precision + bend;
            for (var k = 0; k < n; k++)
            {
                slope -= _added[k] * _moves[k];
                curvature += _added[k] * Lean[k];
            }
            curvature = Math.Max(curvature, precision / 2);
            var step = Math.Clamp(slope / curvature, -2, 2);
            // A step that would undo more than half of the last has gone too far.
            if (step * before < 0 && Math.Abs(step) > Math.Abs(before) / 2) step /= 2;
            var most = Math.Abs(step);
            for (var k = 0; k < n; k++) most = Math.Max(most, Math.Abs(_moves[k] + Lean[k] * step));
            ability += step;
            for (var k = 0; k < n; k++) Walk[k] += Math.Clamp(_moves[k] + Lean[k] * step, -2, 2);
            // Newton squares what was left, and nodes need not stand nearer to the peak than this.
            if (most < 1e-4) break;
            before = step;
        }
        return (ability, curvature);
    }

    /// <summary>Slope and curvature by ability; those by state are added up.</summary>
    private (double Slope, double Bend) Try(ReadOnlySpan<Term> own, double[] odds, double ability)
    {
        double slope = 0, bend = 0;
        _slopes.AsSpan(0, walk.Count).Clear();
        _added.AsSpan(0, walk.Count).Clear();
        _states[0] = Math.Exp(Math.Clamp(ability, -RowOdds.Far, RowOdds.Far));
        for (var k = 0; k < walk.Count; k++) _states[k + 1] = Math.Exp(Math.Clamp(ability + Walk[k], -RowOdds.Far, RowOdds.Far));
        for (var t = 0; t < own.Length; t++)
        {
            var term = own[t];
            var miss = 1 / (1 + _states[term.State + 1] * odds[t]);
            var expected = term.M * (1 - miss);
            var (s, w) = (term.A - expected, expected * miss);
            slope += s;
            bend += w;
            if (term.State < 0) continue;
            _slopes[term.State] += s;
            _added[term.State] += w;
        }
        return (slope, bend);
    }
}
