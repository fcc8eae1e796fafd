using System.Runtime.Intrinsics;
using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>A pupil whose ability is the same in all lessons: one integral, by Gauss-Hermite about its own peak. Source: [PinheiroBates1995] (from memory).</summary>
/// <remarks>Works on odds: exp(η) at a node is exp(ability) times exp(everything else), so no exponential is taken for a trial and a node.</remarks>
internal sealed class StillPupil : IAbilityKernel
{
    // exp(±345) squared is still a number; a logistic has long been 0 or 1 by then.
    private const double Far = 345;

    private readonly TermTable _table;
    private readonly RowLayout _layout;
    private readonly double[][] _covariates;
    private readonly double[] _nodes, _logWeights, _odds, _chances, _abilities, _abilityOdds;
    private readonly LaneProducts _logs;
    private readonly int _lanes;
    private readonly double _stepSd;
    private double _mostOdds;

    public StillPupil(TermTable table, RowLayout layout, double[][] covariates, GaussHermite rule, double stepSd)
    {
        (_table, _layout, _covariates) = (table, layout, covariates);
        _stepSd = stepSd;
        // Lanes are filled up to a multiple of four by nodes that do not count.
        _lanes = (rule.Nodes.Length + 3) / 4 * 4;
        _nodes = [.. rule.Nodes, .. new double[_lanes - rule.Nodes.Length]];
        _logWeights = [.. rule.LogWeights.Select((w, q) => w + rule.Nodes[q] * rule.Nodes[q] / 2), .. Enumerable.Repeat(double.NegativeInfinity, _lanes - rule.Nodes.Length)];
        var most = table.MostTerms;
        (_odds, _chances) = (new double[most], new double[most * _lanes]);
        (_abilities, _abilityOdds, _logs) = (new double[_lanes], new double[_lanes], new(_lanes));
        Rows = new(layout, table.MostOwn, _lanes);
    }

    private RowBuffer Rows { get; }

    public void Add(int pupil, PupilPoint point, PupilSums sums)
    {
        sums.LogLikelihood += Integrate(pupil, point, out point.Modes[pupil]);
        Rows.AddSpread(sums, _abilities, point.Sd);
        Rows.Centre();
        Rows.AddTo(sums, _table.Own(pupil), _covariates[pupil]);
    }

    public PupilPosterior Posterior(int pupil, int lesson, PupilPoint point)
    {
        Integrate(pupil, point, out _);
        Rows.Centre();
        double mean = 0, variance = 0;
        for (var q = 0; q < _lanes; q++) mean += Rows.Weights[q] * _abilities[q];
        var centred = new double[_lanes];
        for (var q = 0; q < _lanes; q++)
        {
            centred[q] = Math.Sqrt(Rows.Weights[q]) * (_abilities[q] - mean);
            variance += centred[q] * centred[q];
        }
        // Ability may wander after the one lesson there was.
        return new(mean, variance + lesson * _stepSd * _stepSd, Rows.CovarianceWith(centred));
    }

    private double Integrate(int pupil, PupilPoint point, out double mode)
    {
        var terms = _table.Terms(pupil);
        var own = _table.Own(pupil);
        Rows.Clear(own.Length);
        var (constant, successes) = Prepare(terms, own, _covariates[pupil], point.Rows);
        var precision = 1 / (point.Sd * point.Sd);
        (mode, var curvature) = Peak(terms, successes, precision, point.Modes[pupil]);
        _logs.Clear();
        var width = 1 / Math.Sqrt(curvature);
        for (var q = 0; q < _lanes; q++)
        {
            _abilities[q] = mode + width * _nodes[q];
            _abilityOdds[q] = Math.Exp(Math.Clamp(_abilities[q], -Far, Far));
        }
        _mostOdds = _abilityOdds.Max();
        for (var t = 0; t < terms.Length; t++) AtNodes(t, terms[t]);

        var most = double.NegativeInfinity;
        for (var q = 0; q < _lanes; q++)
        {
            var ability = _abilities[q];
            Rows.Weights[q] = _logWeights[q] + successes * ability - _logs.Value(q) - ability * ability * precision / 2;
            most = Math.Max(most, Rows.Weights[q]);
        }
        var sum = 0.0;
        for (var q = 0; q < _lanes; q++) sum += Rows.Weights[q] = Math.Exp(Rows.Weights[q] - most);
        for (var q = 0; q < _lanes; q++) Rows.Weights[q] /= sum;
        for (var t = 0; t < terms.Length; t++)
        {
            var mean = Vector256<double>.Zero;
            for (var q = 0; q < _lanes; q += 4)
            {
                var chance = Vector256.LoadUnsafe(ref _chances[t * _lanes + q]);
                mean += Vector256.LoadUnsafe(ref Rows.Weights[q]) * (chance - chance * chance);
            }
            Rows.AddCurvature(terms[t].Own, terms[t].Lesson, terms[t].Tau, terms[t].M * Vector256.Sum(mean));
        }
        return constant + most + Math.Log(sum * width / point.Sd);
    }

    private (double Constant, double Successes) Prepare(ReadOnlySpan<Term> terms, ReadOnlySpan<int> own, double[] covariates, double[] rows)
    {
        double shift = 0, constant = 0, successes = 0;
        for (var m = 0; m < covariates.Length; m++) shift += covariates[m] * rows[_layout.FirstCovariateRow + m];
        var growth = _layout.HasGrowth ? rows[_layout.GrowthRow] : 0;
        var shape = _layout.HasShape ? rows[_layout.ShapeRow] : 0;
        for (var t = 0; t < terms.Length; t++)
        {
            var offset = shift + growth * terms[t].Lesson + shape * terms[t].Tau - rows[own[terms[t].Own]];
            _odds[t] = Math.Exp(Math.Clamp(offset, -Far, Far));
            constant += terms[t].A * (offset - shape * terms[t].Tau);
            successes += terms[t].A;
        }
        return (constant, successes);
    }

    /// <summary>The likeliest ability and the curvature there, by Newton steps kept between the bounds found so far.</summary>
    private (double Mode, double Curvature) Peak(ReadOnlySpan<Term> terms, double successes, double precision, double start)
    {
        double low = double.NegativeInfinity, high = double.PositiveInfinity, ability = start, curvature = precision;
        for (var round = 0; round < 60; round++)
        {
            var odds = Math.Exp(Math.Clamp(ability, -Far, Far));
            double slope = successes - ability * precision, bend = 0, positive = 0;
            for (var t = 0; t < terms.Length; t++)
            {
                var chance = 1 - 1 / (1 + odds * _odds[t]);
                slope -= terms[t].M * chance;
                var w = terms[t].M * chance * (1 - chance);
                bend += w;
                if (w > 0) positive += w;
            }
            if (slope > 0) low = ability; else high = ability;
            // Terms that cut the curve bend the other way; far from the peak they could win, and are then left out.
            curvature = precision + (bend > -precision / 2 ? bend : positive);
            var step = slope / curvature;
            if (Math.Abs(step) < 1e-7) break;
            var next = ability + step;
            ability = next > low && next < high ? next : double.IsFinite(low + high) ? (low + high) / 2 : ability + Math.CopySign(1, step);
        }
        return (ability, curvature);
    }

    private void AtNodes(int t, Term term)
    {
        var scores = Rows.Scores;
        var fits = _logs.Fits(1 + _mostOdds * _odds[t], term.M);
        for (var q = 0; q < _lanes; q += 4)
        {
            var onePlus = Vector256.LoadUnsafe(ref _abilityOdds[q]) * Vector256.Create(_odds[t]) + Vector256<double>.One;
            var chance = Vector256<double>.One - Vector256<double>.One / onePlus;
            chance.StoreUnsafe(ref _chances[t * _lanes + q]);
            if (fits) _logs.Multiply(q, onePlus, term.M); else _logs.Add(q, onePlus, term.M);
            var rest = Vector256.Create((double)term.A) - (double)term.M * chance;
            Subtract(scores, term.Own, q, rest);
            if (Rows.Growth >= 0) Subtract(scores, Rows.Growth, q, -(double)term.Lesson * rest);
            if (Rows.Shape >= 0 && term.Tau != 0) Subtract(scores, Rows.Shape, q, (term.M * term.Tau) * chance);
            if (Rows.Total >= 0) Subtract(scores, Rows.Total, q, -rest);
        }
    }

    private void Subtract(double[] scores, int row, int q, Vector256<double> value)
    {
        ref var place = ref scores[row * _lanes + q];
        (Vector256.LoadUnsafe(ref place) - value).StoreUnsafe(ref place);
    }
}
