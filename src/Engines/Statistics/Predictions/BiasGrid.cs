using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>Biases from −12 to 12 logits in tenths, and functions of them.</summary>
internal static class BiasGrid
{
    private const double From = -12, Step = .1;

    public const int Count = 241;

    public static double At(int i) => From + i * Step;

    /// <summary>How likely a pupil's predictions are at each bias, against the best.</summary>
    public static double[] Likelihood(IReadOnlyList<ExpectedSet> sets)
    {
        var logs = new double[Count];
        foreach (var set in sets)
        {
            var offset = Math.Log(set.ModelFraction / (1 - set.ModelFraction));
            for (var i = 0; i < Count; i++)
            {
                var x = offset + At(i);
                // k log p + (n − k) log(1 − p) at p = 1/(1 + e^−x), in the form that neither overflows nor loses digits.
                logs[i] += set.PredictedCount * x - set.TrialCount * (Math.Max(x, 0) + Math.Log(1 + Math.Exp(-Math.Abs(x))));
            }
        }
        var best = logs.Max();
        // Held above the smallest double, so that however absurd a class's mean is for a pupil, some weight is left to divide by.
        return logs.Select(l => Math.Exp(Math.Max(l - best, -690))).ToArray();
    }

    /// <summary>A normal law's weights on the grid from a first point on, and how many; what lies beyond the grid or eight deviations is left out.</summary>
    /// <param name="mean">Of the law.</param>
    /// <param name="sd">Of the law.</param>
    /// <param name="weights">Takes them; three places longer than the grid, for they are made by fours.</param>
    public static (int First, int Count) Normal(double mean, double sd, double[] weights)
    {
        var first = Math.Clamp((int)Math.Ceiling((mean - 8 * sd - From) / Step), 0, Count - 1);
        var count = Math.Clamp((int)Math.Floor((mean + 8 * sd - From) / Step), first, Count - 1) + 1 - first;
        var (scale, precision) = (Step / (sd * Math.Sqrt(2 * Math.PI)), -0.5 / (sd * sd));
        for (var i = 0; i < count; i += 4)
        {
            var away = (Vector256.Create(0.0, 1, 2, 3) + Vector256.Create((double)(first + i))) * Step + Vector256.Create(From - mean);
            (scale * Vector256.Exp(away * away * precision)).StoreUnsafe(ref weights[i]);
        }
        return (first, count);
    }

    /// <summary>What weights on the grid say.</summary>
    public static PupilBias Read(double[] weights, double unknown, int setCount, int trialCount)
    {
        var sum = weights.Sum();
        var mean = weights.Select((w, i) => w * At(i)).Sum() / sum;
        var variance = weights.Select((w, i) => w * (At(i) - mean) * (At(i) - mean)).Sum() / sum;
        return new(mean, Math.Sqrt(variance), Quantile(weights, .05 * sum), Quantile(weights, .95 * sum), 1 - Below(weights, 0) / sum,
            Math.Clamp(1 - variance / unknown, 0, 1), setCount, trialCount);
    }

    // Weight below a point, each grid point's weight spread evenly over its own tenth.
    private static double Below(double[] weights, double at)
    {
        var cell = (at - From) / Step + .5;
        var whole = (int)cell;
        return weights.Take(whole).Sum() + (cell - whole) * weights[whole];
    }

    private static double Quantile(double[] weights, double below)
    {
        var i = 0;
        for (; i < Count - 1 && below > weights[i]; i++) below -= weights[i];
        return At(i) - Step / 2 + (weights[i] > 0 ? Step * Math.Min(1, below / weights[i]) : 0);
    }
}
