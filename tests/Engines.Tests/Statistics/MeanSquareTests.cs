using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class MeanSquareTests
{
    // The hardest of four sets of figures for means and deviations, by rule and certified values from memory: 1001 figures, the first 10000000.2 and then
    // 10000000.1 and .3 by turns; mean 10000000.2, standard deviation 0.1. Source: [NIST2012].
    private static readonly double[] Hard = [10000000.2, .. Enumerable.Range(0, 1000).Select(k => k % 2 == 0 ? 10000000.1 : 10000000.3)];

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Add_FiguresCountedInParts_KeepsTheDeviation(int parts)
    {
        var whole = default(MeanSquare);
        foreach (var part in Hard.Chunk(Hard.Length / parts + 1))
        {
            var own = default(MeanSquare);
            foreach (var value in part) own.Add(value);
            whole.Add(own);
        }
        Assert.Equal(1001, whole.Count);
        Assert.Equal(10000000.2, whole.Mean, 1e-8);
        // The jackknife's error of a mean is √((n − 1)/n · Σ(x − mean)²); from it the deviation.
        Assert.Equal(0.1, whole.JackknifeError * Math.Sqrt(1001.0 / 1000) / Math.Sqrt(1000), 1e-8);
    }

    [Fact]
    public void Add_OnePass_KeepsTheDeviation()
    {
        var all = default(MeanSquare);
        foreach (var value in Hard) all.Add(value);
        Assert.Equal(0.1, all.JackknifeError * Math.Sqrt(1001.0 / 1000) / Math.Sqrt(1000), 1e-8);
    }
}
