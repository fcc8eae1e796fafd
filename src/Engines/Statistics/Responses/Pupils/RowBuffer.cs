using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>
/// What one pupil says about the own rows, at each node: the derivatives there and the mean second derivatives. Together they give the
/// derivatives of the integral exactly: minus the second one is E[−ℓ″] − Var[ℓ′]. Source: [Louis1982] (from memory).
/// </summary>
internal sealed class RowBuffer
{
    private readonly RowLayout _layout;
    private readonly int _lanes;
    private readonly double[] _means, _roots;
    private readonly int[] _places;
    private int _own;

    public RowBuffer(RowLayout layout, int maxOwn, int lanes)
    {
        (_layout, _lanes) = (layout, lanes);
        var rows = maxOwn + layout.ExtraCount;
        Scores = new double[rows * lanes];
        Curvature = new double[rows * rows];
        Weights = new double[lanes];
        (_means, _roots) = (new double[rows], new double[lanes]);
        _places = new int[rows];
    }

    /// <summary>Derivative of the log-likelihood by own row and node.</summary>
    public double[] Scores { get; }

    /// <summary>Mean of minus the second derivative, lower triangle, <see cref="Rows"/> wide.</summary>
    public double[] Curvature { get; }

    /// <summary>How much each node counts; they sum to 1.</summary>
    public double[] Weights { get; }

    public int Rows { get; private set; }

    public int Growth { get; private set; }

    public int Shape { get; private set; }

    public int Spread { get; private set; }

    public int Total { get; private set; }

    public void Clear(int own)
    {
        _own = own;
        var next = own;
        Growth = _layout.HasGrowth ? next++ : -1;
        Shape = _layout.HasShape ? next++ : -1;
        Spread = _layout.HasSpread ? next++ : -1;
        Total = _layout.Covariates > 0 ? next++ : -1;
        Rows = next;
        Array.Clear(Scores, 0, Rows * _lanes);
        Array.Clear(Curvature, 0, Rows * Rows);
    }

    /// <summary>Adds a second derivative by η of one term to all rows that move its η.</summary>
    public void AddCurvature(int own, double lesson, double tau, double curvature)
    {
        Curvature[own * Rows + own] += curvature;
        if (Growth >= 0)
        {
            Curvature[Growth * Rows + own] -= lesson * curvature;
            Curvature[Growth * Rows + Growth] += lesson * lesson * curvature;
        }
        if (Shape >= 0)
        {
            Curvature[Shape * Rows + own] -= tau * curvature;
            Curvature[Shape * Rows + Shape] += tau * tau * curvature;
            if (Growth >= 0) Curvature[Shape * Rows + Growth] += lesson * tau * curvature;
        }
        if (Total < 0) return;
        Curvature[Total * Rows + own] -= curvature;
        Curvature[Total * Rows + Total] += curvature;
        if (Growth >= 0) Curvature[Total * Rows + Growth] += lesson * curvature;
        if (Shape >= 0) Curvature[Total * Rows + Shape] += tau * curvature;
    }

    /// <summary>Turns logarithms of weights into weights that sum to 1, and returns the logarithm of what they summed to.</summary>
    public double Weigh()
    {
        var best = Vector256.Create(double.NegativeInfinity);
        for (var q = 0; q < _lanes; q += 4) best = Vector256.Max(best, Vector256.LoadUnsafe(ref Weights[q]));
        var most = Math.Max(Math.Max(best.GetElement(0), best.GetElement(1)), Math.Max(best.GetElement(2), best.GetElement(3)));
        var total = Vector256<double>.Zero;
        for (var q = 0; q < _lanes; q += 4)
        {
            var weights = Vector256.Exp(Vector256.Max(Vector256.LoadUnsafe(ref Weights[q]) - Vector256.Create(most), Vector256.Create(-700.0)));
            // Below this a node counts for nothing; the lanes that only fill up are among them.
            weights = Vector256.ConditionalSelect(Vector256.GreaterThan(weights, Vector256.Create(1e-300)), weights, Vector256<double>.Zero);
            weights.StoreUnsafe(ref Weights[q]);
            total += weights;
        }
        var sum = Vector256.Sum(total);
        for (var q = 0; q < _lanes; q += 4) (Vector256.LoadUnsafe(ref Weights[q]) / sum).StoreUnsafe(ref Weights[q]);
        return most + Math.Log(sum);
    }

    /// <summary>Mean over the nodes.</summary>
    public double Mean(double[] byLane, int first)
    {
        var mean = Vector256<double>.Zero;
        for (var q = 0; q < _lanes; q += 4) mean += Vector256.LoadUnsafe(ref Weights[q]) * Vector256.LoadUnsafe(ref byLane[first + q]);
        return Vector256.Sum(mean);
    }

    /// <summary>Adds how the likelihood moves with the logarithm of the spread of abilities, which are given by node; also as a row of its own where there is one.</summary>
    public void AddSpread(PupilSums sums, double[] abilities, double sd)
    {
        var (square, precision) = (Vector256<double>.Zero, 1 / (sd * sd));
        for (var q = 0; q < _lanes; q += 4)
        {
            var ability = Vector256.LoadUnsafe(ref abilities[q]);
            var own = ability * ability * precision;
            square += Vector256.LoadUnsafe(ref Weights[q]) * own;
            if (Spread >= 0) (own - Vector256<double>.One).StoreUnsafe(ref Scores[Spread * _lanes + q]);
        }
        var sum = Vector256.Sum(square);
        sums.SpreadSlope += sum - 1;
        if (Spread >= 0) Curvature[Spread * Rows + Spread] = 2 * sum;
    }

    /// <summary>Turns scores into their distance from the mean times the root of the weight, so that a product of two rows is a covariance.</summary>
    public void Centre()
    {
        for (var q = 0; q < _lanes; q += 4) Vector256.Sqrt(Vector256.LoadUnsafe(ref Weights[q])).StoreUnsafe(ref _roots[q]);
        for (var r = 0; r < Rows; r++)
        {
            ref var row = ref Scores[r * _lanes];
            var sum = Vector256<double>.Zero;
            for (var q = 0; q < _lanes; q += 4) sum += Vector256.LoadUnsafe(ref Weights[q]) * Vector256.LoadUnsafe(ref row, (nuint)q);
            var mean = _means[r] = Vector256.Sum(sum);
            for (var q = 0; q < _lanes; q += 4)
                (Vector256.LoadUnsafe(ref _roots[q]) * (Vector256.LoadUnsafe(ref row, (nuint)q) - Vector256.Create(mean))).StoreUnsafe(ref row, (nuint)q);
        }
    }

    /// <summary>Adds the centred pupil to the sums of all.</summary>
    public void AddTo(PupilSums sums, ReadOnlySpan<int> own, ReadOnlySpan<double> covariates)
    {
        for (var r = 0; r < Rows; r++) if (r != Total) _places[r] = Place(r, own);
        for (var r = 0; r < Rows; r++)
        {
            if (r == Total) continue;
            sums.Gradient[_places[r]] += _means[r];
            // Own rows stand in the order of the layout, so what comes before is to the left: the lower triangle.
            var line = sums.Information.AsSpan(_places[r] * sums.Gradient.Length, _places[r] + 1);
            var row = Scores.AsSpan(r * _lanes, _lanes);
            for (var s = 0; s <= r; s++) line[_places[s]] += Curvature[r * Rows + s] - Covariance(row, Scores.AsSpan(s * _lanes, _lanes));
        }
        if (Total >= 0) AddCovariates(sums, covariates);
    }

    private void AddCovariates(PupilSums sums, ReadOnlySpan<double> covariates)
    {
        var total = Scores.AsSpan(Total * _lanes, _lanes);
        for (var s = 0; s < Rows; s++)
        {
            var information = Curvature[Total * Rows + s] - Covariance(total, Scores.AsSpan(s * _lanes, _lanes));
            for (var m = 0; m < covariates.Length; m++)
            {
                if (s != Total) Put(sums, _layout.FirstCovariateRow + m, _places[s], covariates[m] * information);
                else for (var n = 0; n <= m; n++) Put(sums, _layout.FirstCovariateRow + m, _layout.FirstCovariateRow + n, covariates[m] * covariates[n] * information);
            }
        }
        for (var m = 0; m < covariates.Length; m++) sums.Gradient[_layout.FirstCovariateRow + m] += covariates[m] * _means[Total];
    }

    /// <summary>Covariance over the nodes of a quantity with each centred row.</summary>
    public double[] CovarianceWith(ReadOnlySpan<double> centred)
    {
        var slopes = new double[Rows];
        for (var r = 0; r < Rows; r++) slopes[r] = Covariance(Scores.AsSpan(r * _lanes, _lanes), centred);
        return slopes;
    }

    private static double Covariance(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = Vector256<double>.Zero;
        ref var first = ref MemoryMarshal.GetReference(a);
        ref var second = ref MemoryMarshal.GetReference(b);
        for (nuint q = 0; q < (nuint)a.Length; q += 4) sum += Vector256.LoadUnsafe(ref first, q) * Vector256.LoadUnsafe(ref second, q);
        return Vector256.Sum(sum);
    }

    private static void Put(PupilSums sums, int row, int column, double value) =>
        sums.Information[Math.Max(row, column) * sums.Gradient.Length + Math.Min(row, column)] += value;

    private int Place(int row, ReadOnlySpan<int> own) => row < _own ? own[row] : row == Growth ? _layout.GrowthRow : row == Shape ? _layout.ShapeRow : _layout.SpreadRow;
}
