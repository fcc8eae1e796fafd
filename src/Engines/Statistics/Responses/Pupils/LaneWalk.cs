using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>A walk at all nodes at once: for each lane the assumed precision plus what trials add to its diagonal, factored and solved. State by state, lanes together.</summary>
internal sealed class LaneWalk(WalkPrecision walk, int most, int lanes)
{
    // A product of so many pivots is still a number.
    private const int PivotsALog = 8;

    private readonly double[] _inversePivots = new double[most * lanes], _leans = new double[most * lanes], _logs = new double[lanes];

    /// <summary>By state and lane: how far ability has wandered.</summary>
    public double[] Walks { get; } = new double[most * lanes];

    /// <summary>By state and lane: the slope of the log-likelihood there.</summary>
    public double[] Slopes { get; } = new double[most * lanes];

    /// <summary>By state and lane: what trials add to the precision.</summary>
    public double[] Added { get; } = new double[most * lanes];

    /// <summary>By state and lane: variance given the ability.</summary>
    public double[] Variances { get; } = new double[most * lanes];

    /// <summary>Takes the assumed pull into the slopes, and returns minus half its form at four lanes.</summary>
    public Vector256<double> Pull(int q)
    {
        var (form, n) = (Vector256<double>.Zero, walk.Count);
        for (var k = 0; k < n; k++)
        {
            var at = Load(Walks, k, q);
            var pull = walk.Diagonal[k] * at;
            if (k > 0) pull += walk.Off[k - 1] * Load(Walks, k - 1, q);
            if (k < n - 1) pull += walk.Off[k] * Load(Walks, k + 1, q);
            Store(Slopes, k, q, Load(Slopes, k, q) - pull);
            form += pull * at;
        }
        return form * -0.5;
    }

    /// <summary>Factors four lanes.</summary>
    public void Factor(int q)
    {
        var (before, product, logs) = (Vector256<double>.Zero, Vector256<double>.One, Vector256<double>.Zero);
        for (var k = 0; k < walk.Count; k++)
        {
            // Terms that cut the curve may take away; never more than half of what is assumed.
            var diagonal = Vector256.Create(walk.Diagonal[k]) + Vector256.Max(Load(Added, k, q), Vector256.Create(-walk.Diagonal[k] / 2));
            var pivot = k > 0 ? diagonal - walk.Off[k - 1] * walk.Off[k - 1] * before : diagonal;
            before = Vector256<double>.One / pivot;
            Store(_inversePivots, k, q, before);
            Store(_leans, k, q, walk.Off[k] * before);
            product *= pivot;
            if (k % PivotsALog != PivotsALog - 1) continue;
            logs += Vector256.Log(product);
            product = Vector256<double>.One;
        }
        (logs + Vector256.Log(product)).StoreUnsafe(ref _logs[q]);
    }

    /// <summary>Log determinant of the last factor at four lanes.</summary>
    public Vector256<double> LogDeterminant(int q) => Vector256.LoadUnsafe(ref _logs[q]);

    /// <summary>Solves with the last factor at four lanes, in place; what is solved stands as the walks do, from a first place on.</summary>
    public void Solve(double[] x, int first, int q)
    {
        var n = walk.Count;
        for (var k = 1; k < n; k++) Store(x, first + k, q, Load(x, first + k, q) - Load(_leans, k - 1, q) * Load(x, first + k - 1, q));
        for (var k = n - 1; k >= 0; k--)
        {
            var value = Load(x, first + k, q) * Load(_inversePivots, k, q);
            if (k < n - 1) value -= Load(_leans, k, q) * Load(x, first + k + 1, q);
            Store(x, first + k, q, value);
        }
    }

    /// <summary>The variances from the last factor at four lanes: seen from both ends, no inverse needed.</summary>
    public void Vary(int q)
    {
        var later = Vector256<double>.Zero;
        for (var k = walk.Count - 1; k >= 0; k--)
        {
            var lean = Load(_leans, k, q);
            later = Load(_inversePivots, k, q) + lean * lean * later;
            Store(Variances, k, q, later);
        }
    }

    /// <summary>Covariance of two states given the ability in one lane, the second not before the first.</summary>
    public double Covariance(int k, int l, int lane)
    {
        var value = Variances[l * lanes + lane];
        for (var j = l - 1; j >= k; j--) value *= -_leans[j * lanes + lane];
        return value;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Load(double[] x, int k, int q) => Vector256.LoadUnsafe(ref x[k * lanes + q]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Store(double[] x, int k, int q, Vector256<double> value) => value.StoreUnsafe(ref x[k * lanes + q]);
}
