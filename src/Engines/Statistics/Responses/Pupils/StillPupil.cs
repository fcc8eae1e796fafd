using System.Runtime.Intrinsics;
using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>A pupil whose ability is the same in all lessons: one integral, by Gauss-Hermite about its own peak. Source: [PinheiroBates1995] (from memory).</summary>
/// <remarks>
/// Works on odds: exp(η) at a node is exp(ability) times exp(everything else), so no exponential is taken for a trial and a node; and none for a trial either
/// where levels' and lessons' own odds can be multiplied.
/// </remarks>
internal sealed class StillPupil : IAbilityKernel
{
    private readonly TermTable _table;
    private readonly RowLayout _layout;
    private readonly double[][] _covariates;
    private readonly double[] _nodes, _logWeights, _odds, _times, _chances, _abilities, _abilityOdds;
    private readonly LaneProducts _logs;
    private readonly RowOdds _rowOdds;
    private readonly int _lanes;
    private readonly double _stepSd;

    public StillPupil(TermTable table, RowLayout layout, double[][] covariates, GaussHermite rule, double stepSd)
    {
        (_table, _layout, _covariates) = (table, layout, covariates);
        _stepSd = stepSd;
        // Lanes are filled up to a multiple of four by nodes that do not count.
        _lanes = (rule.Nodes.Length + 3) / 4 * 4;
        _nodes = [.. rule.Nodes, .. new double[_lanes - rule.Nodes.Length]];
        _logWeights = [.. rule.LogWeights.Select((w, q) => w + rule.Nodes[q] * rule.Nodes[q] / 2), .. Enumerable.Repeat(double.NegativeInfinity, _lanes - rule.Nodes.Length)];
        // Terms are filled up, too, by some that never happened.
        var most = (table.MostTerms + 3) / 4 * 4;
        (_odds, _times, _chances) = (new double[most], new double[most], new double[most * _lanes]);
        (_abilities, _abilityOdds, _logs) = (new double[_lanes], new double[_lanes], new(_lanes));
        _rowOdds = new(layout, table.MostLesson);
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
        var taus = _table.Taus(pupil);
        var own = _table.Own(pupil);
        Rows.Clear(own.Length);
        _rowOdds.Take(point.Rows);
        var (constant, successes) = Prepare(terms, taus, own, _covariates[pupil]);
        var precision = 1 / (point.Sd * point.Sd);
        (mode, var curvature) = Peak(terms.Length, successes, precision, point.Modes[pupil]);
        _logs.Clear();
        var width = 1 / Math.Sqrt(curvature);
        var mostOdds = 0.0;
        for (var q = 0; q < _lanes; q += 4)
        {
            var abilities = Vector256.Create(mode) + width * Vector256.LoadUnsafe(ref _nodes[q]);
            var odds = Vector256.Exp(Vector256.Min(Vector256.Max(abilities, Vector256.Create(-RowOdds.Far)), Vector256.Create(RowOdds.Far)));
            abilities.StoreUnsafe(ref _abilities[q]);
            odds.StoreUnsafe(ref _abilityOdds[q]);
            for (var k = 0; k < 4; k++) mostOdds = Math.Max(mostOdds, odds.GetElement(k));
        }
        for (var t = 0; t < terms.Length; t++) AtNodes(t, terms[t], taus.Length > 0 ? taus[t] : 0, mostOdds);

        for (var q = 0; q < _lanes; q += 4)
        {
            var abilities = Vector256.LoadUnsafe(ref _abilities[q]);
            (Vector256.LoadUnsafe(ref _logWeights[q]) + abilities * (Vector256.Create(successes) - abilities * (precision / 2)) - _logs.Value(q)).StoreUnsafe(ref Rows.Weights[q]);
        }
        var log = Rows.Weigh();
        for (var t = 0; t < terms.Length; t++)
        {
            var mean = Vector256<double>.Zero;
            for (var q = 0; q < _lanes; q += 4)
            {
                var chance = Vector256.LoadUnsafe(ref _chances[t * _lanes + q]);
                mean += Vector256.LoadUnsafe(ref Rows.Weights[q]) * (chance - chance * chance);
            }
            Rows.AddCurvature(terms[t].Own, terms[t].Lesson, taus.Length > 0 ? taus[t] : 0, terms[t].M * Vector256.Sum(mean));
        }
        return constant + log + Math.Log(width / point.Sd);
    }

    private (double Constant, double Successes) Prepare(ReadOnlySpan<Term> terms, ReadOnlySpan<double> taus, ReadOnlySpan<int> own, double[] covariates)
    {
        var (shift, shiftOdds) = _rowOdds.Shift(covariates);
        double constant = 0, successes = 0;
        for (var t = 0; t < terms.Length; t++)
        {
            var (logit, odds) = _rowOdds.Of(own[terms[t].Own], terms[t].Lesson, taus.Length > 0 ? taus[t] : 0, shift, shiftOdds);
            (_odds[t], _times[t]) = (odds, terms[t].M);
            constant += terms[t].A * logit;
            successes += terms[t].A;
        }
        for (var t = terms.Length; t % 4 != 0; t++) _odds[t] = _times[t] = 0;
        return (constant, successes);
    }

    /// <summary>The likeliest ability and the curvature there, by Newton steps kept between the bounds found so far.</summary>
    private (double Mode, double Curvature) Peak(int terms, double successes, double precision, double start)
    {
        double low = double.NegativeInfinity, high = double.PositiveInfinity, ability = start, curvature = precision;
        for (var round = 0; round < 60; round++)
        {
            var odds = Vector256.Create(Math.Exp(Math.Clamp(ability, -RowOdds.Far, RowOdds.Far)));
            var (expected, bends, positives) = (Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);
            for (var t = 0; t < terms; t += 4)
            {
                var chance = Vector256<double>.One - Vector256<double>.One / (Vector256<double>.One + odds * Vector256.LoadUnsafe(ref _odds[t]));
                var one = Vector256.LoadUnsafe(ref _times[t]) * chance;
                expected += one;
                var bent = one - one * chance;
                bends += bent;
                positives += Vector256.Max(bent, Vector256<double>.Zero);
            }
            var slope = successes - ability * precision - Vector256.Sum(expected);
            var bend = Vector256.Sum(bends);
            if (slope > 0) low = ability; else high = ability;
            // Terms that cut the curve bend the other way; far from the peak they could win, and are then left out.
            curvature = precision + (bend > -precision / 2 ? bend : Vector256.Sum(positives));
            var step = slope / curvature;
            var next = ability + step;
            if (Math.Abs(step) < 1e-4)
            {
                // Newton squares what was left, and nodes need not stand nearer to the peak than this.
                ability = next;
                break;
            }
            ability = next > low && next < high ? next : double.IsFinite(low + high) ? (low + high) / 2 : ability + Math.CopySign(1, step);
        }
        return (ability, curvature);
    }

    private void AtNodes(int t, Term term, double tau, double mostOdds)
    {
        var scores = Rows.Scores;
        var fits = _logs.Fits(1 + mostOdds * _odds[t], term.M);
        for (var q = 0; q < _lanes; q += 4)
        {
            var onePlus = Vector256.LoadUnsafe(ref _abilityOdds[q]) * Vector256.Create(_odds[t]) + Vector256<double>.One;
            var chance = Vector256<double>.One - Vector256<double>.One / onePlus;
            chance.StoreUnsafe(ref _chances[t * _lanes + q]);
            if (fits) _logs.Multiply(q, onePlus, term.M); else _logs.Add(q, onePlus, term.M);
            var rest = Vector256.Create((double)term.A) - (double)term.M * chance;
            Subtract(scores, term.Own, q, rest);
            if (Rows.Growth >= 0) Subtract(scores, Rows.Growth, q, -(double)term.Lesson * rest);
            if (Rows.Shape >= 0 && tau != 0) Subtract(scores, Rows.Shape, q, (term.M * tau) * chance);
            if (Rows.Total >= 0) Subtract(scores, Rows.Total, q, -rest);
        }
    }

    private void Subtract(double[] scores, int row, int q, Vector256<double> value)
    {
        ref var place = ref scores[row * _lanes + q];
        (Vector256.LoadUnsafe(ref place) - value).StoreUnsafe(ref place);
    }
}
