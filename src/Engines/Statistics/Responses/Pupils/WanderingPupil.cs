using System.Runtime.Intrinsics;
using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>
/// A pupil whose ability wanders from lesson to lesson. Where it began is integrated by Gauss-Hermite; given that, how far it wandered by
/// Laplace's approximation, which is close because a lesson's few trials say little beside what is assumed about one step. All nodes are worked at once.
/// </summary>
internal sealed class WanderingPupil : IAbilityKernel
{
    private readonly TermTable _table;
    private readonly double[][] _covariates;
    private readonly RowBuffer _rows;
    private readonly WalkPrecision _walk;
    private readonly LaneWalk _lanesWalk;
    private readonly WalkPeak _peak;
    private readonly RowOdds _rowOdds;
    private readonly LaneProducts _logs;
    private readonly double _stepSd;
    private readonly int _lanes;
    private readonly double[] _nodes, _logWeights, _abilities, _odds, _onePlus, _bends, _lessonOdds, _moves, _values, _successes, _corrections, _touch, _moved;

    public WanderingPupil(TermTable table, RowLayout layout, double[][] covariates, GaussHermite rule, double stepSd)
    {
        (_table, _covariates, _stepSd) = (table, covariates, stepSd);
        _lanes = (rule.Nodes.Length + 3) / 4 * 4;
        // Lanes are filled up to a multiple of four by nodes that do not count.
        _nodes = [.. rule.Nodes, .. new double[_lanes - rule.Nodes.Length]];
        _logWeights = [.. rule.LogWeights.Select((w, q) => w + rule.Nodes[q] * rule.Nodes[q] / 2), .. Enumerable.Repeat(double.NegativeInfinity, _lanes - rule.Nodes.Length)];
        var (terms, states, rows) = (table.MostTerms, table.MostStates, table.MostOwn + layout.ExtraCount);
        (_abilities, _values, _odds) = (new double[_lanes], new double[_lanes], new double[terms]);
        (_onePlus, _bends) = (new double[terms * _lanes], new double[terms * _lanes]);
        (_lessonOdds, _moves, _corrections, _successes) = (new double[(states + 1) * _lanes], new double[states * _lanes], new double[states * _lanes], new double[states + 1]);
        (_touch, _moved) = (new double[rows * states * _lanes], new double[rows * states * _lanes]);
        _walk = new(states);
        _lanesWalk = new(_walk, states, _lanes);
        _peak = new(_walk, states);
        _rowOdds = new(layout, table.MostLesson);
        _logs = new(_lanes);
        _rows = new(layout, table.MostOwn, _lanes);
    }

    public void Add(int pupil, PupilPoint point, PupilSums sums)
    {
        sums.LogLikelihood += Integrate(pupil, point, out point.Modes[pupil]);
        _peak.Walk.AsSpan(0, _walk.Count).CopyTo(point.Walks.AsSpan(_table.StateStart(pupil)));
        _rows.AddSpread(sums, _abilities, point.Sd);
        _rows.Centre();
        _rows.AddTo(sums, _table.Own(pupil), _covariates[pupil]);
    }

    public PupilPosterior Posterior(int pupil, int lesson, PupilPoint point)
    {
        Integrate(pupil, point, out _);
        _rows.Centre();
        var (walks, variances, moved) = At(lesson, _table.States(pupil));
        double mean = 0, variance = 0;
        for (var q = 0; q < _lanes; q++) mean += _rows.Weights[q] * (_abilities[q] + walks[q]);
        var centred = new double[_lanes];
        for (var q = 0; q < _lanes; q++)
        {
            centred[q] = Math.Sqrt(_rows.Weights[q]) * (_abilities[q] + walks[q] - mean);
            variance += centred[q] * centred[q] + _rows.Weights[q] * variances[q];
        }
        var slopes = _rows.CovarianceWith(centred);
        for (var r = 0; r < slopes.Length; r++) slopes[r] += moved[r];
        return new(mean, variance, slopes);
    }

    /// <summary>The log-likelihood; scores, curvature and weights are left in the buffer.</summary>
    private double Integrate(int pupil, PupilPoint point, out double mode)
    {
        var terms = _table.Terms(pupil);
        var taus = _table.Taus(pupil);
        var own = _table.Own(pupil);
        _walk.Set(_table.States(pupil), _stepSd);
        var constant = Prepare(terms, taus, own, _covariates[pupil], point.Rows);
        var precision = 1 / (point.Sd * point.Sd);
        point.Walks.AsSpan(_table.StateStart(pupil), _walk.Count).CopyTo(_peak.Walk);
        (mode, var curvature) = _peak.Find(terms, _odds, precision, point.Modes[pupil]);

        _rows.Clear(own.Length);
        var (width, n) = (1 / Math.Sqrt(curvature), _walk.Count);
        for (var q = 0; q < _lanes; q += 4)
        {
            var away = width * Vector256.LoadUnsafe(ref _nodes[q]);
            (Vector256.Create(mode) + away).StoreUnsafe(ref _abilities[q]);
            for (var k = 0; k < n; k++) (Vector256.Create(_peak.Walk[k]) + _peak.Lean[k] * away).StoreUnsafe(ref _lanesWalk.Walks[k * _lanes + q]);
        }
        Settle(terms);
        Weigh(terms, precision);
        var log = _rows.Weigh();
        Score(terms, taus);
        return constant + log + Math.Log(width / point.Sd);
    }

    private double Prepare(ReadOnlySpan<Term> terms, ReadOnlySpan<double> taus, ReadOnlySpan<int> own, double[] covariates, double[] rows)
    {
        _rowOdds.Take(rows);
        var (shift, shiftOdds) = _rowOdds.Shift(covariates);
        var constant = 0.0;
        Array.Clear(_successes);
        for (var t = 0; t < terms.Length; t++)
        {
            (var logit, _odds[t]) = _rowOdds.Of(own[terms[t].Own], terms[t].Lesson, taus.Length > 0 ? taus[t] : 0, shift, shiftOdds);
            constant += terms[t].A * logit;
            _successes[terms[t].State + 1] += terms[t].A;
        }
        return constant;
    }

    /// <summary>Finds the walk at every node, from those in hand, with chances and curvatures there and the walks' factor.</summary>
    private void Settle(ReadOnlySpan<Term> terms)
    {
        var n = _walk.Count;
        for (var round = 0; ; round++)
        {
            var most = Vector256<double>.Zero;
            for (var q = 0; q < _lanes; q += 4)
            {
                Try(terms, q);
                _lanesWalk.Pull(q).StoreUnsafe(ref _values[q]);
                _lanesWalk.Factor(q);
                for (var k = 0; k < n; k++) Vector256.LoadUnsafe(ref _lanesWalk.Slopes[k * _lanes + q]).StoreUnsafe(ref _moves[k * _lanes + q]);
                _lanesWalk.Solve(_moves, 0, q);
                for (var k = 0; k < n; k++) most = Vector256.Max(most, Vector256.Abs(Vector256.LoadUnsafe(ref _moves[k * _lanes + q])));
            }
            if (Vector256.LessThanAll(most, Vector256.Create(1e-5)) || round == 30) return;
            for (var at = 0; at < n * _lanes; at += 4)
                (Vector256.LoadUnsafe(ref _lanesWalk.Walks[at]) + Vector256.LoadUnsafe(ref _moves[at])).StoreUnsafe(ref _lanesWalk.Walks[at]);
        }
    }

    /// <summary>Odds and curvatures of all terms at four lanes; slopes and curvatures are added up by state.</summary>
    private void Try(ReadOnlySpan<Term> terms, int q)
    {
        var (far, ability) = (Vector256.Create(RowOdds.Far), Vector256.LoadUnsafe(ref _abilities[q]));
        Vector256.Exp(Vector256.Min(Vector256.Max(ability, -far), far)).StoreUnsafe(ref _lessonOdds[q]);
        for (var k = 0; k < _walk.Count; k++)
        {
            var at = ability + Vector256.LoadUnsafe(ref _lanesWalk.Walks[k * _lanes + q]);
            Vector256.Exp(Vector256.Min(Vector256.Max(at, -far), far)).StoreUnsafe(ref _lessonOdds[(k + 1) * _lanes + q]);
            Vector256<double>.Zero.StoreUnsafe(ref _lanesWalk.Slopes[k * _lanes + q]);
            Vector256<double>.Zero.StoreUnsafe(ref _lanesWalk.Added[k * _lanes + q]);
        }
        for (var t = 0; t < terms.Length; t++)
        {
            var term = terms[t];
            var onePlus = Vector256.LoadUnsafe(ref _lessonOdds[(term.State + 1) * _lanes + q]) * _odds[t] + Vector256<double>.One;
            var miss = Vector256<double>.One / onePlus;
            var expected = (double)term.M * (Vector256<double>.One - miss);
            var bend = expected * miss;
            onePlus.StoreUnsafe(ref _onePlus[t * _lanes + q]);
            bend.StoreUnsafe(ref _bends[t * _lanes + q]);
            if (term.State < 0) continue;
            var at = term.State * _lanes + q;
            (Vector256.LoadUnsafe(ref _lanesWalk.Slopes[at]) + Vector256.Create((double)term.A) - expected).StoreUnsafe(ref _lanesWalk.Slopes[at]);
            (Vector256.LoadUnsafe(ref _lanesWalk.Added[at]) + bend).StoreUnsafe(ref _lanesWalk.Added[at]);
        }
    }

    /// <summary>The logarithms of the nodes' weights.</summary>
    private void Weigh(ReadOnlySpan<Term> terms, double precision)
    {
        _logs.Clear();
        for (var t = 0; t < terms.Length; t++)
        {
            var most = Vector256<double>.One;
            for (var q = 0; q < _lanes; q += 4) most = Vector256.Max(most, Vector256.LoadUnsafe(ref _onePlus[t * _lanes + q]));
            var fits = _logs.Fits(Math.Max(Math.Max(most.GetElement(0), most.GetElement(1)), Math.Max(most.GetElement(2), most.GetElement(3))), terms[t].M);
            for (var q = 0; q < _lanes; q += 4)
            {
                var onePlus = Vector256.LoadUnsafe(ref _onePlus[t * _lanes + q]);
                if (fits) _logs.Multiply(q, onePlus, terms[t].M); else _logs.Add(q, onePlus, terms[t].M);
            }
        }
        var all = 0.0;
        for (var k = 0; k <= _walk.Count; k++) all += _successes[k];
        for (var q = 0; q < _lanes; q += 4)
        {
            var ability = Vector256.LoadUnsafe(ref _abilities[q]);
            var value = Vector256.LoadUnsafe(ref _logWeights[q]) + ability * (Vector256.Create(all) - ability * (precision / 2)) - _logs.Value(q)
                + Vector256.LoadUnsafe(ref _values[q]) + (Vector256.Create(_walk.LogDeterminant) - _lanesWalk.LogDeterminant(q)) * 0.5;
            for (var k = 0; k < _walk.Count; k++) value += _successes[k + 1] * Vector256.LoadUnsafe(ref _lanesWalk.Walks[k * _lanes + q]);
            value.StoreUnsafe(ref _rows.Weights[q]);
        }
    }

    /// <summary>Scores and curvature at all nodes. The walk follows the rows, and its determinant moves with it: both are part of the score.</summary>
    private void Score(ReadOnlySpan<Term> terms, ReadOnlySpan<double> taus)
    {
        var (n, rows) = (_walk.Count, _rows.Rows);
        Array.Clear(_corrections, 0, n * _lanes);
        Array.Clear(_touch, 0, n * rows * _lanes);
        for (var q = 0; q < _lanes; q += 4)
        {
            _lanesWalk.Vary(q);
            for (var t = 0; t < terms.Length; t++)
            {
                if (terms[t].State < 0) continue;
                var at = terms[t].State * _lanes + q;
                (Vector256.LoadUnsafe(ref _corrections[at]) + Vector256.LoadUnsafe(ref _lanesWalk.Variances[at]) * Skew(t, q)).StoreUnsafe(ref _corrections[at]);
            }
            _lanesWalk.Solve(_corrections, 0, q);
            for (var t = 0; t < terms.Length; t++) Score(terms[t], t, taus.Length > 0 ? taus[t] : 0, q, n);
        }
        for (var t = 0; t < terms.Length; t++) _rows.AddCurvature(terms[t].Own, terms[t].Lesson, taus.Length > 0 ? taus[t] : 0, _rows.Mean(_bends, t * _lanes));
        TakeUp(n, rows);
    }

    /// <summary>How the curvature of a term changes with its logit.</summary>
    private Vector256<double> Skew(int t, int q) =>
        Vector256.LoadUnsafe(ref _bends[t * _lanes + q]) * (Vector256.Create(2.0) / Vector256.LoadUnsafe(ref _onePlus[t * _lanes + q]) - Vector256<double>.One);

    private void Score(Term term, int t, double tau, int q, int n)
    {
        var bend = Vector256.LoadUnsafe(ref _bends[t * _lanes + q]);
        var minus = (double)-term.M * (Vector256<double>.One - Vector256<double>.One / Vector256.LoadUnsafe(ref _onePlus[t * _lanes + q]));
        if (term.State >= 0)
        {
            var at = term.State * _lanes + q;
            minus += (bend * Vector256.LoadUnsafe(ref _corrections[at]) - Vector256.LoadUnsafe(ref _lanesWalk.Variances[at]) * Skew(t, q)) * 0.5;
        }
        var rest = minus + Vector256.Create((double)term.A);
        Add(_rows.Scores, term.Own * _lanes + q, -rest);
        if (_rows.Growth >= 0) Add(_rows.Scores, _rows.Growth * _lanes + q, (double)term.Lesson * rest);
        if (_rows.Shape >= 0) Add(_rows.Scores, _rows.Shape * _lanes + q, tau * minus);
        if (_rows.Total >= 0) Add(_rows.Scores, _rows.Total * _lanes + q, rest);
        if (term.State < 0) return;
        Add(_touch, (term.Own * n + term.State) * _lanes + q, -bend);
        if (_rows.Growth >= 0) Add(_touch, (_rows.Growth * n + term.State) * _lanes + q, (double)term.Lesson * bend);
        if (_rows.Shape >= 0) Add(_touch, (_rows.Shape * n + term.State) * _lanes + q, tau * bend);
        if (_rows.Total >= 0) Add(_touch, (_rows.Total * n + term.State) * _lanes + q, bend);
    }

    private static void Add(double[] to, int at, Vector256<double> value) => (Vector256.LoadUnsafe(ref to[at]) + value).StoreUnsafe(ref to[at]);

    /// <summary>How the walk gives way to each row; what it takes up does not bend the likelihood.</summary>
    private void TakeUp(int n, int rows)
    {
        if (n == 0) return;
        Array.Copy(_touch, _moved, n * rows * _lanes);
        for (var r = 0; r < rows; r++)
        {
            if (r == _rows.Spread) continue;
            for (var q = 0; q < _lanes; q += 4) _lanesWalk.Solve(_moved, r * n, q);
            for (var s = 0; s <= r; s++)
            {
                if (s == _rows.Spread) continue;
                var taken = Vector256<double>.Zero;
                for (var q = 0; q < _lanes; q += 4)
                {
                    var sum = Vector256<double>.Zero;
                    for (var k = 0; k < n; k++)
                        sum += Vector256.LoadUnsafe(ref _moved[(r * n + k) * _lanes + q]) * Vector256.LoadUnsafe(ref _touch[(s * n + k) * _lanes + q]);
                    taken += sum * Vector256.LoadUnsafe(ref _rows.Weights[q]);
                }
                _rows.Curvature[r * rows + s] -= Vector256.Sum(taken);
            }
        }
    }

    /// <summary>Where the walk is in a lesson, node by node: on the line between the lessons around it, and further on where the last one left it; and how its mean moves with the rows.</summary>
    private (double[] Walks, double[] Variances, double[] Moved) At(int lesson, ReadOnlySpan<int> states)
    {
        var (n, rows, variance) = (_walk.Count, _rows.Rows, _stepSd * _stepSd);
        var (walks, variances, moved) = (new double[_lanes], new double[_lanes], new double[rows]);
        var next = 0;
        while (next < n && states[next] < lesson) next++;
        var (from, before, last) = (next > 0 ? states[next - 1] : 0, next - 1, next < n ? next : -1);
        var share = last >= 0 ? (double)(lesson - from) / (states[next] - from) : 0;
        for (var q = 0; q < _lanes; q++)
        {
            walks[q] = (before >= 0 ? (1 - share) * _lanesWalk.Walks[before * _lanes + q] : 0) + (last >= 0 ? share * _lanesWalk.Walks[last * _lanes + q] : 0);
            variances[q] = variance * (lesson - from) * (1 - share)
                + (before >= 0 ? (1 - share) * (1 - share) * _lanesWalk.Covariance(before, before, q) : 0)
                + (before >= 0 && last >= 0 ? 2 * share * (1 - share) * _lanesWalk.Covariance(before, last, q) : 0)
                + (last >= 0 ? share * share * _lanesWalk.Covariance(last, last, q) : 0);
        }
        for (var r = 0; r < rows; r++)
        {
            if (r == _rows.Spread) continue;
            if (before >= 0) moved[r] -= (1 - share) * _rows.Mean(_moved, (r * n + before) * _lanes);
            if (last >= 0) moved[r] -= share * _rows.Mean(_moved, (r * n + last) * _lanes);
        }
        return (walks, variances, moved);
    }
}
