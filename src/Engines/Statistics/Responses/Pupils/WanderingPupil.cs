using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>
/// A pupil whose ability wanders from lesson to lesson. Where it began is integrated by Gauss-Hermite; given that, how far it wandered by
/// Laplace's approximation, which is close because a lesson's few trials say little beside what is assumed about one step.
/// </summary>
internal sealed class WanderingPupil : IAbilityKernel
{
    // exp(±345) squared is still a number; a logistic has long been 0 or 1 by then.
    private const double Far = 345;

    private readonly TermTable _table;
    private readonly RowLayout _layout;
    private readonly double[][] _covariates;
    private readonly GaussHermite _rule;
    private readonly RowBuffer _rows;
    private readonly WalkPrecision _walk;
    private readonly double _stepSd;
    private readonly int _lanes, _most;
    private readonly double[] _offsets, _odds, _chances, _bends, _lessonOdds, _slopes, _added, _first, _second, _peak, _lean, _inverse, _corrections, _touch, _moved, _abilities, _walks, _walkVariance;

    public WanderingPupil(TermTable table, RowLayout layout, double[][] covariates, GaussHermite rule, double stepSd)
    {
        (_table, _layout, _covariates, _rule, _stepSd) = (table, layout, covariates, rule, stepSd);
        _lanes = (rule.Nodes.Length + 3) / 4 * 4;
        var terms = table.MostTerms;
        var own = table.MostOwn;
        _most = table.MostStates;
        (_offsets, _odds, _chances, _bends, _lessonOdds) = (new double[terms], new double[terms], new double[terms], new double[terms], new double[_most + 1]);
        (_slopes, _added, _first, _second, _peak, _lean, _corrections) =
            (new double[_most], new double[_most], new double[_most], new double[_most], new double[_most], new double[_most], new double[_most]);
        _inverse = new double[_most * _most];
        (_touch, _moved) = (new double[_most * (own + layout.ExtraCount)], new double[_most * (own + layout.ExtraCount)]);
        (_abilities, _walks, _walkVariance) = (new double[_lanes], new double[_lanes], new double[_lanes]);
        _walk = new(_most);
        _rows = new(layout, own, _lanes);
    }

    public void Add(int pupil, PupilPoint point, PupilSums sums)
    {
        sums.LogLikelihood += Integrate(pupil, point, null, [], out point.Modes[pupil]);
        _peak.AsSpan(0, _walk.Count).CopyTo(point.Walks.AsSpan(_table.StateStart(pupil)));
        _rows.AddSpread(sums, _abilities, point.Sd);
        _rows.Centre();
        _rows.AddTo(sums, _table.Own(pupil), _covariates[pupil]);
    }

    public PupilPosterior Posterior(int pupil, int lesson, PupilPoint point)
    {
        var rows = _table.Own(pupil).Length + _layout.ExtraCount;
        var moved = new double[_lanes * rows];
        Integrate(pupil, point, lesson, moved, out _);
        _rows.Centre();
        double mean = 0, variance = 0;
        for (var q = 0; q < _lanes; q++) mean += _rows.Weights[q] * (_abilities[q] + _walks[q]);
        var centred = new double[_lanes];
        for (var q = 0; q < _lanes; q++)
        {
            centred[q] = Math.Sqrt(_rows.Weights[q]) * (_abilities[q] + _walks[q] - mean);
            variance += centred[q] * centred[q] + _rows.Weights[q] * _walkVariance[q];
        }
        var slopes = _rows.CovarianceWith(centred);
        for (var q = 0; q < _lanes; q++)
            for (var r = 0; r < rows; r++) slopes[r] += _rows.Weights[q] * moved[q * rows + r];
        return new(mean, variance, slopes);
    }

    /// <summary>The log-likelihood; scores, curvature and weights are left in the buffer. With a lesson asked for, also where the walk is then, by node.</summary>
    private double Integrate(int pupil, PupilPoint point, int? lesson, double[] moved, out double mode)
    {
        var terms = _table.Terms(pupil);
        var taus = _table.Taus(pupil);
        var own = _table.Own(pupil);
        _walk.Set(_table.States(pupil), _stepSd);
        Prepare(terms, taus, own, _covariates[pupil], point.Rows);
        var precision = 1 / (point.Sd * point.Sd);
        point.Walks.AsSpan(_table.StateStart(pupil), _walk.Count).CopyTo(_peak);
        (mode, var curvature) = Peak(terms, precision, point.Modes[pupil]);

        _rows.Clear(own.Length);
        Array.Clear(_rows.Weights);
        var width = 1 / Math.Sqrt(curvature);
        double first = 0, sum = 0;
        for (var q = 0; q < _rule.Nodes.Length; q++)
        {
            _abilities[q] = mode + width * _rule.Nodes[q];
            for (var k = 0; k < _walk.Count; k++) _first[k] = _peak[k] + _lean[k] * (_abilities[q] - mode);
            var value = Settle(terms, _abilities[q]);
            var log = _rule.LogWeights[q] + _rule.Nodes[q] * _rule.Nodes[q] / 2 + value - _abilities[q] * _abilities[q] * precision / 2;
            // Weights relative to the first node until all are known: they differ by far less than a double can hold.
            if (q == 0) first = log;
            sum += _rows.Weights[q] = Math.Exp(log - first);
            Invert();
            AtNode(q, terms, taus);
            if (lesson is { } asked) At(asked, _table.States(pupil), q, moved);
        }
        for (var q = 0; q < _rule.Nodes.Length; q++) _rows.Weights[q] /= sum;
        for (var k = 0; k < _rows.Rows * _rows.Rows; k++) _rows.Curvature[k] /= sum;
        return first + Math.Log(sum * width / point.Sd);
    }

    private void Prepare(ReadOnlySpan<Term> terms, ReadOnlySpan<double> taus, ReadOnlySpan<int> own, double[] covariates, double[] rows)
    {
        var shift = 0.0;
        for (var m = 0; m < covariates.Length; m++) shift += covariates[m] * rows[_layout.FirstCovariateRow + m];
        var growth = _layout.HasGrowth ? rows[_layout.GrowthRow] : 0;
        var shape = _layout.HasShape ? rows[_layout.ShapeRow] : 0;
        for (var t = 0; t < terms.Length; t++)
        {
            _offsets[t] = shift + growth * terms[t].Lesson - rows[own[terms[t].Own]];
            _odds[t] = Math.Exp(Math.Clamp(_offsets[t] + shape * (taus.Length > 0 ? taus[t] : 0), -Far, Far));
        }
    }

    /// <summary>Chances and curvatures of all terms at an ability and a walk; slopes by state, and by ability, are added up.</summary>
    private (double Value, double Slope, double Bend) Trials(ReadOnlySpan<Term> terms, double ability, ReadOnlySpan<double> walk)
    {
        double value = 0, slope = 0, bend = 0;
        _slopes.AsSpan(0, _walk.Count).Clear();
        _added.AsSpan(0, _walk.Count).Clear();
        var logs = LogProduct.Start;
        _lessonOdds[0] = Math.Exp(Math.Clamp(ability, -Far, Far));
        for (var k = 0; k < _walk.Count; k++) _lessonOdds[k + 1] = Math.Exp(Math.Clamp(ability + walk[k], -Far, Far));
        for (var t = 0; t < terms.Length; t++)
        {
            var term = terms[t];
            var eta = ability + _offsets[t] + (term.State >= 0 ? walk[term.State] : 0);
            var onePlus = 1 + _lessonOdds[term.State + 1] * _odds[t];
            var chance = 1 - 1 / onePlus;
            logs.Add(onePlus, term.M);
            value += term.A * eta;
            var (s, w) = (term.A - term.M * chance, term.M * chance * (1 - chance));
            (_chances[t], _bends[t]) = (chance, w);
            slope += s;
            bend += w;
            if (term.State < 0) continue;
            _slopes[term.State] += s;
            _added[term.State] += w;
        }
        return (value - logs.Value, slope, bend);
    }

    /// <summary>The likeliest ability and walk together, the curvature with the walk following, and how the walk follows.</summary>
    private (double Mode, double Curvature) Peak(ReadOnlySpan<Term> terms, double precision, double ability)
    {
        var (before, curvature) = (0.0, precision);
        var n = _walk.Count;
        for (var round = 0; round < 60; round++)
        {
            var (_, slope, bend) = Trials(terms, ability, _peak);
            slope -= ability * precision;
            _walk.Pull(_peak, _slopes);
            _walk.Factor(_added);
            for (var k = 0; k < n; k++) (_second[k], _lean[k]) = (_slopes[k], -_added[k]);
            _walk.Solve(_second.AsSpan(0, n));
            _walk.Solve(_lean.AsSpan(0, n));
            curvature = precision + bend;
            for (var k = 0; k < n; k++)
            {
                slope -= _added[k] * _second[k];
                curvature += _added[k] * _lean[k];
            }
            curvature = Math.Max(curvature, precision / 2);
            var step = Math.Clamp(slope / curvature, -2, 2);
            // A step that would undo more than half of the last has gone too far.
            if (step * before < 0 && Math.Abs(step) > Math.Abs(before) / 2) step /= 2;
            var most = Math.Abs(step);
            for (var k = 0; k < n; k++) most = Math.Max(most, Math.Abs(_second[k] + _lean[k] * step));
            if (most < 1e-7) break;
            ability += step;
            for (var k = 0; k < n; k++) _peak[k] += Math.Clamp(_second[k] + _lean[k] * step, -2, 2);
            before = step;
        }
        return (ability, curvature);
    }

    /// <summary>Finds the walk at one ability, from the one in hand; returns the log-likelihood with the walk integrated.</summary>
    private double Settle(ReadOnlySpan<Term> terms, double ability)
    {
        for (var round = 0; ; round++)
        {
            var (value, _, _) = Trials(terms, ability, _first);
            value += _walk.Pull(_first, _slopes);
            var log = _walk.Factor(_added);
            for (var k = 0; k < _walk.Count; k++) _second[k] = _slopes[k];
            _walk.Solve(_second.AsSpan(0, _walk.Count));
            var most = 0.0;
            for (var k = 0; k < _walk.Count; k++) most = Math.Max(most, Math.Abs(_second[k]));
            if (most < 1e-5 || round == 30) return value + (_walk.LogDeterminant - log) / 2;
            for (var k = 0; k < _walk.Count; k++) _first[k] += _second[k];
        }
    }

    private void Invert()
    {
        var n = _walk.Count;
        for (var k = 0; k < n; k++)
        {
            var column = _inverse.AsSpan(k * n, n);
            column.Clear();
            column[k] = 1;
            _walk.Solve(column);
        }
    }

    /// <summary>Scores and curvature at one node. The walk follows the rows, and its determinant moves with it: both are part of the score.</summary>
    private void AtNode(int q, ReadOnlySpan<Term> terms, ReadOnlySpan<double> taus)
    {
        var (n, rows, weight) = (_walk.Count, _rows.Rows, _rows.Weights[q]);
        _touch.AsSpan(0, n * rows).Clear();
        for (var k = 0; k < n; k++) _corrections[k] = 0;
        for (var t = 0; t < terms.Length; t++)
            if (terms[t].State is >= 0 and var s) _corrections[s] += _inverse[s * n + s] * _bends[t] * (1 - 2 * _chances[t]);
        _walk.Solve(_corrections.AsSpan(0, n));
        for (var t = 0; t < terms.Length; t++)
        {
            var (term, tau) = (terms[t], taus.Length > 0 ? taus[t] : 0);
            var minus = -term.M * _chances[t];
            if (term.State >= 0)
                minus += _bends[t] * (_corrections[term.State] - _inverse[term.State * n + term.State] * (1 - 2 * _chances[t])) / 2;
            var rest = term.A + minus;
            _rows.Scores[term.Own * _lanes + q] -= rest;
            if (_rows.Growth >= 0) _rows.Scores[_rows.Growth * _lanes + q] += term.Lesson * rest;
            if (_rows.Shape >= 0) _rows.Scores[_rows.Shape * _lanes + q] += tau * minus;
            if (_rows.Total >= 0) _rows.Scores[_rows.Total * _lanes + q] += rest;
            _rows.AddCurvature(term.Own, term.Lesson, tau, weight * _bends[t]);
            if (term.State < 0) continue;
            var touch = _touch.AsSpan(term.State * rows, rows);
            touch[term.Own] -= _bends[t];
            if (_rows.Growth >= 0) touch[_rows.Growth] += term.Lesson * _bends[t];
            if (_rows.Shape >= 0) touch[_rows.Shape] += tau * _bends[t];
            if (_rows.Total >= 0) touch[_rows.Total] += _bends[t];
        }
        // How the walk gives way to each row; what it takes up does not bend the likelihood.
        // A lesson touches few of the rows; the others are passed over.
        _moved.AsSpan(0, n * rows).Clear();
        for (var l = 0; l < n; l++)
        {
            for (var r = 0; r < rows; r++)
            {
                if (_touch[l * rows + r] is not 0 and var by)
                    for (var k = 0; k < n; k++) _moved[k * rows + r] -= _inverse[k * n + l] * by;
            }
        }
        for (var k = 0; k < n; k++)
        {
            var moved = _moved.AsSpan(k * rows, rows);
            for (var r = 0; r < rows; r++)
            {
                if (_touch[k * rows + r] is 0) continue;
                var by = weight * _touch[k * rows + r];
                var line = _rows.Curvature.AsSpan(r * rows, r + 1);
                for (var s = 0; s < line.Length; s++) line[s] += by * moved[s];
            }
        }
    }

    /// <summary>Where the walk is in a lesson, at one node: on the line between the lessons around it, and further on where the last one left it.</summary>
    private void At(int lesson, ReadOnlySpan<int> states, int q, double[] moved)
    {
        var (n, rows, variance) = (_walk.Count, _rows.Rows, _stepSd * _stepSd);
        var next = 0;
        while (next < n && states[next] < lesson) next++;
        var (from, before) = (next > 0 ? states[next - 1] : 0, next - 1);
        double share = 0, own;
        if (next < n)
        {
            share = (double)(lesson - from) / (states[next] - from);
            own = variance * (lesson - from) * (1 - share);
        }
        else own = variance * (lesson - from);
        double Inverse(int k, int l) => k < 0 || l < 0 ? 0 : _inverse[k * n + l];
        var last = next < n ? next : -1;
        _walks[q] = (before >= 0 ? (1 - share) * _first[before] : 0) + (last >= 0 ? share * _first[last] : 0);
        _walkVariance[q] = own + (1 - share) * (1 - share) * Inverse(before, before) + 2 * share * (1 - share) * Inverse(before, last) + share * share * Inverse(last, last);
        for (var r = 0; r < rows; r++)
            moved[q * rows + r] = (before >= 0 ? (1 - share) * _moved[before * rows + r] : 0) + (last >= 0 ? share * _moved[last * rows + r] : 0);
    }
}
