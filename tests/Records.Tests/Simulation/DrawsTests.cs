using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class DrawsTests
{
    private const int Count = 200_000;

    [Fact]
    public void NextNormal_ManyTimes_HasItsMoments()
    {
        var draws = Draws.For(20260105, 1);
        var sample = Enumerable.Range(0, Count).Select(_ => draws.NextNormal(2, 3)).ToList();
        var mean = sample.Average();
        var variance = sample.Sum(x => (x - mean) * (x - mean)) / Count;
        var kurtosis = sample.Sum(x => Math.Pow((x - mean) / 3, 4)) / Count;
        // Standard errors: 3/√n, 9·√(2/n), √(96/n); four of each.
        Assert.Equal(2, mean, 4 * 3 / Math.Sqrt(Count));
        Assert.Equal(9, variance, 4 * 9 * Math.Sqrt(2.0 / Count));
        Assert.Equal(3, kurtosis, 4 * Math.Sqrt(96.0 / Count));
    }

    [Theory]
    [InlineData(-1.0986122886681098, 0.25)] // logit of 1/4
    [InlineData(0, 0.5)]
    [InlineData(2.1972245773362196, 0.9)] // logit of 9/10
    public void NextLogistic_ManyTimes_LiesBelowAsOftenAsItShould(double logits, double expected)
    {
        var draws = Draws.For(20260105, 2);
        var below = Enumerable.Range(0, Count).Count(_ => draws.NextLogistic() < logits) / (double)Count;
        Assert.Equal(expected, below, 4 * Math.Sqrt(expected * (1 - expected) / Count));
    }

    [Fact]
    public void NextWeighted_ManyTimes_FollowsTheWeights()
    {
        var draws = Draws.For(20260105, 3);
        double[] weights = [1, 0, 3, 4];
        var counts = Enumerable.Range(0, Count).GroupBy(_ => draws.NextWeighted(weights)).ToDictionary(g => g.Key, g => g.Count());
        Assert.False(counts.ContainsKey(1));
        foreach (var i in new[] { 0, 2, 3 })
            Assert.Equal(weights[i] / 8, counts[i] / (double)Count, 4 * Math.Sqrt(0.25 / Count));
    }

    [Fact]
    public void For_NeighbouringSeedsAndPurposes_AreUnrelated()
    {
        double[][] sequences = [Sequence(1, 1), Sequence(1, 2), Sequence(2, 1), Sequence(2, 2)];
        for (var a = 0; a < sequences.Length; a++)
        {
            for (var b = a + 1; b < sequences.Length; b++)
            {
                // Uncorrelated halves of the unit square: 1/√n is one standard error of the correlation.
                var correlation = sequences[a].Zip(sequences[b], (x, y) => (x - 0.5) * (y - 0.5) * 12).Average();
                Assert.Equal(0, correlation, 4 / Math.Sqrt(20_000));
            }
        }

        static double[] Sequence(ulong seed, ulong purpose)
        {
            var draws = Draws.For(seed, purpose);
            return Enumerable.Range(0, 20_000).Select(_ => draws.NextFraction()).ToArray();
        }
    }

    [Fact]
    public void Mix_PublishedSeed_GivesThePublishedNumber() =>
        // The first output of SplitMix64 for this seed, as the task page of Rosetta Code prints it (from memory).
        Assert.Equal(6457827717110365317UL, Draws.Mix(1234567));

    [Fact]
    public void Shuffled_OfAList_KeepsEveryItem()
    {
        var draws = Draws.For(20260105, 4);
        Assert.Equal(Enumerable.Range(0, 50), draws.Shuffled(Enumerable.Range(0, 50)).Order());
    }
}
