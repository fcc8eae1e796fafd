using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>
/// The tempting shortcut, kept as a control that must fail: abilities and levels at their joint mode, with the curvature there (penalised
/// quasi-likelihood). Dense, for ticks with a middle, a slope for holds and, over several lessons, growth. Source: [BreslowClayton1993] (from memory).
/// </summary>
internal sealed class JointMode
{
    private readonly ResponseData _data;
    private readonly ResponsePriors _priors;
    private readonly bool _hasGrowth;
    private readonly int _first;
    private Cholesky<double> _factor = null!;

    public JointMode(ResponseData data, ResponsePriors priors, double abilitySd, double residualSd)
    {
        (_data, _priors, AbilitySd, ResidualSd) = (data, priors, abilitySd, residualSd);
        _hasGrowth = data.Trials.Any(t => t.Lesson > 0);
        _first = _hasGrowth ? 3 : 2;
        Values = Vector<double>.Build.Dense(_first + data.Pupils.Count + data.Levels.Count);
        Climb();
    }

    public double AbilitySd { get; private set; }

    public double ResidualSd { get; private set; }

    /// <summary>Middle, slope, growth if any, abilities, residuals.</summary>
    public Vector<double> Values { get; private set; }

    public double LogEvidence { get; private set; }

    /// <summary>Both spreads from their own mode and curvature, to and fro until they stay.</summary>
    public JointMode Estimated()
    {
        for (var round = 0; round < 60; round++)
        {
            var inverse = _factor.Solve(Matrix<double>.Build.DenseIdentity(Values.Count));
            double Spread(int first, int count) => Math.Sqrt(Enumerable.Range(first, count).Average(k => Values[k] * Values[k] + inverse[k, k]));
            var (ability, residual) = (Spread(_first, _data.Pupils.Count), Math.Max(0.05, Spread(_first + _data.Pupils.Count, _data.Levels.Count)));
            var moved = Math.Abs(ability - AbilitySd) + Math.Abs(residual - ResidualSd);
            (AbilitySd, ResidualSd) = (ability, residual);
            Climb();
            if (moved < 1e-3) break;
        }
        return this;
    }

    public (double Mean, double Sd) Eta(int pupil, int level, int lesson) => Of(Row(pupil, level, lesson));

    public (double Mean, double Sd) Value(int place) => Of(Vector<double>.Build.Dense(Values.Count, k => k == place ? 1 : 0));

    public (double Mean, double Sd) Ability(int pupil) => Value(_first + pupil);

    public (double Mean, double Sd) Difficulty(int level)
    {
        var row = -Row(0, level, 0);
        row[_first] = 0;
        return Of(row);
    }

    /// <summary>How much harder one level is than another.</summary>
    public (double Mean, double Sd) Contrast(int harder, int easier)
    {
        var row = Row(0, easier, 0) - Row(0, harder, 0);
        return Of(row);
    }

    private (double Mean, double Sd) Of(Vector<double> row) => (row * Values, Math.Sqrt(row * _factor.Solve(row)));

    private Vector<double> Row(int pupil, int level, int lesson)
    {
        var row = Vector<double>.Build.Dense(Values.Count);
        foreach (var (place, value) in Entries(pupil, level, lesson)) row[place] += value;
        return row;
    }

    /// <summary>The entries of a row that are not 0: few, and a dense product for each trial would take most of the time.</summary>
    private (int Place, double Value)[] Entries(int pupil, int level, int lesson) =>
    [
        (0, -1), (1, -_data.Levels[level].Dose!.Value.HardnessLogits), (_first + pupil, 1), (_first + _data.Pupils.Count + level, -1), (2, _hasGrowth ? lesson : 0),
    ];

    private void Climb()
    {
        var n = Values.Count;
        var (mean, precision) = (Vector<double>.Build.Dense(n), Vector<double>.Build.Dense(n));
        for (var k = 0; k < n; k++)
        {
            var sd = k switch
            {
                0 => _priors.Middle.SdLogits,
                1 => Math.Sqrt(_priors.DoseSlope.SdLogits * _priors.DoseSlope.SdLogits + _priors.OwnSlopeSdLogits * _priors.OwnSlopeSdLogits),
                2 when _hasGrowth => _priors.Growth.SdLogits,
                _ => k < _first + _data.Pupils.Count ? AbilitySd : ResidualSd,
            };
            precision[k] = 1 / (sd * sd);
            mean[k] = k == 0 ? _priors.Middle.MeanLogits : k == 1 ? _priors.DoseSlope.MeanLogits : 0;
        }
        for (var round = 0; round < 50; round++)
        {
            var information = Matrix<double>.Build.DenseOfDiagonalVector(precision);
            var gradient = -precision.PointwiseMultiply(Values - mean);
            var log = -0.5 * (Values - mean).PointwisePower(2).DotProduct(precision) + 0.5 * precision.PointwiseLog().Sum();
            foreach (var t in _data.Trials)
            {
                var row = Entries(t.Pupil, t.Level, t.Lesson);
                var eta = 0.0;
                foreach (var (a, x) in row) eta += x * Values[a];
                var p = 1 / (1 + Math.Exp(-eta));
                log += t.Successes * eta - t.Trials * Math.Log(1 + Math.Exp(eta));
                foreach (var (a, x) in row)
                {
                    gradient[a] += x * (t.Successes - t.Trials * p);
                    foreach (var (b, y) in row) information[a, b] += x * y * t.Trials * p * (1 - p);
                }
            }
            _factor = information.Cholesky();
            LogEvidence = log - 0.5 * _factor.DeterminantLn;
            var step = _factor.Solve(gradient);
            if (step.InfinityNorm() < 1e-11) return;
            Values += step;
        }
    }
}
