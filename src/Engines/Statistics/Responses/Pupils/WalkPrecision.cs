namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>What is assumed about how far an ability has wandered by each lesson: steps of a random walk that began in the first lesson. Its inverse covariance touches neighbours only.</summary>
internal sealed class WalkPrecision
{
    private readonly double[] _pivots;

    public WalkPrecision(int most)
    {
        (Diagonal, Off, _pivots) = (new double[most], new double[most], new double[most]);
    }

    public double[] Diagonal { get; }

    /// <summary>Between a state and the next.</summary>
    public double[] Off { get; }

    public double LogDeterminant { get; private set; }

    public int Count { get; private set; }

    public void Set(ReadOnlySpan<int> lessons, double stepSd)
    {
        (Count, LogDeterminant) = (lessons.Length, 0);
        var before = 0;
        for (var k = 0; k < Count; k++)
        {
            var step = 1 / (stepSd * stepSd * (lessons[k] - before));
            before = lessons[k];
            LogDeterminant += Math.Log(step);
            (Diagonal[k], Off[k]) = (step, 0);
            if (k == 0) continue;
            Diagonal[k - 1] += step;
            Off[k - 1] = -step;
        }
    }

    /// <summary>Adds minus the assumed precision times a walk, and returns minus half its form.</summary>
    public double Pull(ReadOnlySpan<double> walk, Span<double> slopes)
    {
        var form = 0.0;
        for (var k = 0; k < Count; k++)
        {
            var pull = Diagonal[k] * walk[k] + (k > 0 ? Off[k - 1] * walk[k - 1] : 0) + (k < Count - 1 ? Off[k] * walk[k + 1] : 0);
            slopes[k] -= pull;
            form += pull * walk[k];
        }
        return -form / 2;
    }

    /// <summary>Factors the assumed precision plus what trials add to its diagonal, and returns the log determinant.</summary>
    public double Factor(ReadOnlySpan<double> added)
    {
        var log = 0.0;
        for (var k = 0; k < Count; k++)
        {
            // Terms that cut the curve may take away; never more than half of what is assumed.
            _pivots[k] = Diagonal[k] + Math.Max(added[k], -Diagonal[k] / 2) - (k > 0 ? Off[k - 1] * Off[k - 1] / _pivots[k - 1] : 0);
            log += Math.Log(_pivots[k]);
        }
        return log;
    }

    /// <summary>Solves with the last factor, in place.</summary>
    public void Solve(Span<double> x)
    {
        for (var k = 1; k < Count; k++) x[k] -= Off[k - 1] / _pivots[k - 1] * x[k - 1];
        for (var k = Count - 1; k >= 0; k--) x[k] = (x[k] - (k < Count - 1 ? Off[k] * x[k + 1] : 0)) / _pivots[k];
    }
}
