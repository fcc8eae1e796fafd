using Slantwise.Engines.Planning;

namespace Slantwise.Engines.Tests.Planning;

public sealed class SeededDrawsTests
{
    [Fact]
    public void NextFactor_ManyDraws_HaveAMeanOfOneAndTheSpread()
    {
        var draws = new SeededDraws(7, 1);
        var factors = Enumerable.Range(0, 200_000).Select(_ => draws.NextFactor(0.4)).ToArray();
        var logs = factors.Select(f => Math.Log(f)).ToArray();
        var (mean, logMean) = (factors.Average(), logs.Average());
        var spread = Math.Sqrt(logs.Average(l => (l - logMean) * (l - logMean)));
        // Standard errors of 200,000 draws: .0009 for the mean, .0006 for the spread; four of them.
        Assert.Equal(1, mean, 0.004);
        Assert.Equal(0.4, spread, 0.0026);
        Assert.Equal(-0.08, logMean, 0.0036);
    }

    [Fact]
    public void NextExponential_ManyDraws_HaveAMeanAndASpreadOfOne()
    {
        var draws = new SeededDraws(8, 1);
        var times = Enumerable.Range(0, 200_000).Select(_ => draws.NextExponential()).ToArray();
        Assert.Equal(1, times.Average(), 0.009);
        // The variance of a sample variance is 8 / n for an exponential.
        Assert.Equal(1, times.Average(t => (t - 1) * (t - 1)), 0.026);
    }

    [Fact]
    public void NextFraction_OfTwoPurposes_DiffersAndRepeats()
    {
        double[] Take(ulong seed, ulong purpose)
        {
            var draws = new SeededDraws(seed, purpose);
            return [.. Enumerable.Range(0, 5).Select(_ => draws.NextFraction())];
        }
        Assert.Equal(Take(1, 1), Take(1, 1));
        Assert.NotEqual(Take(1, 1), Take(1, 2));
        Assert.NotEqual(Take(1, 1), Take(2, 1));
    }

    [Fact]
    public void Shuffle_ThreeThings_GivesEachOrderEquallyOften()
    {
        var draws = new SeededDraws(9, 1);
        var counts = new Dictionary<string, int>();
        for (var i = 0; i < 60_000; i++)
        {
            List<char> things = ['a', 'b', 'c'];
            draws.Shuffle(things);
            var order = string.Concat(things);
            counts[order] = counts.GetValueOrDefault(order) + 1;
        }
        Assert.Equal(6, counts.Count);
        // Standard error of a count: 91.
        Assert.All(counts.Values, c => Assert.InRange(c, 10_000 - 365, 10_000 + 365));
    }
}
