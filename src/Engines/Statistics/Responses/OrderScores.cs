using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>Turns an order of tasks, easiest first, into difficulties that the model can take as a hypothesis.</summary>
public static class OrderScores
{
    /// <summary>The difficulty each place in an order stands for if difficulties are spread like a normal curve.</summary>
    /// <param name="ranks">One number a task, smaller is easier; equal numbers share their places. Any number of tasks.</param>
    /// <returns>One score a task in logits, in the order given; they sum to 0 and have a standard deviation of about 1.</returns>
    /// <remarks>Normal scores by Φ⁻¹((rank − 3/8) / (n + 1/4)). Source: [Blom1958] (from memory).</remarks>
    public static IReadOnlyList<double> Of(IReadOnlyList<int> ranks)
    {
        var scores = new double[ranks.Count];
        foreach (var tied in Enumerable.Range(0, ranks.Count).GroupBy(i => ranks[i]))
        {
            var below = ranks.Count(r => r < tied.Key);
            var score = Enumerable.Range(below + 1, tied.Count()).Average(place => Normal.InvCDF(0, 1, (place - 0.375) / (ranks.Count + 0.25)));
            foreach (var i in tied) scores[i] = score;
        }
        return scores;
    }
}
