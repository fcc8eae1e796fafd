using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class WilsonIntervalTests
{
    // Source: [Newcombe1998] table I, method 3, from memory; four printed digits, so half of the last one is tolerated.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void Of_CountsOfNewcombe_GivesTheTable(int successes, int trials, double low, double high) =>
        AssertRange(low, high, WilsonInterval.Of(successes, trials, 0.95), 0.5e-4);

    // Source: [R2022] prop.test(x, n, correct = FALSE) of R 4.2.2, twelve digits printed.
    [Theory]
    [InlineData(81, 263, 0.255288519878, 0.3662095770)]
    [InlineData(15, 148, 0.062386399531, 0.1604872417)]
    [InlineData(3, 5, 0.230724281276, 0.8823792258)]
    [InlineData(5, 5, 0.565517535217, 1)]
    [InlineData(0, 5, 0, 0.4344824648)]
    public void Of_CountsOfR_AgreesInTenDigits(int successes, int trials, double low, double high) =>
        AssertRange(low, high, WilsonInterval.Of(successes, trials, 0.95), 1e-10);

    [Fact]
    public void Of_OneOfTwoByHand_GivesTheClosedForm()
    {
        // By hand, z = 1.959963984540054: the centre is 1/2, half the width is z √(1/8 + z²/16) / (1 + z²/2).
        const double z = 1.959963984540054;
        var half = z * Math.Sqrt(1 / 8.0 + z * z / 16) / (1 + z * z / 2);
        AssertRange(0.5 - half, 0.5 + half, WilsonInterval.Of(1, 2, 0.95), 1e-14);
    }

    [Fact]
    public void Of_NoTrial_IsNone() => Assert.Null(WilsonInterval.Of(0, 0, 0.9));

    [Fact]
    public void Of_NothingOrEverything_TouchesTheEndExactly()
    {
        for (var n = 1; n <= 60; n++)
        {
            Assert.Equal(0, WilsonInterval.Of(0, n, 0.9)!.Value.LowFraction);
            Assert.Equal(1, WilsonInterval.Of(n, n, 0.9)!.Value.HighFraction);
        }
    }

    [Theory]
    [InlineData(-1, 5, 0.9)]
    [InlineData(6, 5, 0.9)]
    [InlineData(0, -1, 0.9)]
    [InlineData(1, 5, 0)]
    [InlineData(1, 5, 1)]
    [InlineData(1, 5, double.NaN)]
    public void Of_OutsideItsRange_Throws(int successes, int trials, double confidence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WilsonInterval.Of(successes, trials, confidence));

    [Fact]
    public void Of_AnyCount_AgreesWithTheScoreTestSolvedByBisection() => Counts.Sample(c =>
    {
        var (k, n) = c;
        // The plain second version: the shares p at which (k/n − p)² = z² p (1 − p) / n, z the 95th point of the normal law.
        const double z = 1.6448536269514722;
        var seen = (double)k / n;
        double Excess(double p) => (seen - p) * (seen - p) - z * z * p * (1 - p) / n;
        var expectedLow = k == 0 ? 0 : Root(0, seen, Excess);
        var expectedHigh = k == n ? 1 : Root(1, seen, Excess);
        AssertRange(expectedLow, expectedHigh, WilsonInterval.Of(k, n, 0.9), 1e-9);
    });

    [Fact]
    public void Of_AnyCount_HoldsTheShareMirrorsAndNests() => Counts.Sample(c =>
    {
        var (k, n) = c;
        var range = WilsonInterval.Of(k, n, 0.9)!.Value;
        Assert.InRange((double)k / n, range.LowFraction, range.HighFraction);
        AssertRange(1 - range.HighFraction, 1 - range.LowFraction, WilsonInterval.Of(n - k, n, 0.9), 1e-12);
        var wider = WilsonInterval.Of(k, n, 0.95)!.Value;
        Assert.True(wider.LowFraction <= range.LowFraction && range.HighFraction <= wider.HighFraction);
        var more = WilsonInterval.Of(2 * k, 2 * n, 0.9)!.Value;
        Assert.True(more.HighFraction - more.LowFraction < range.HighFraction - range.LowFraction);
    });

    internal static Gen<(int Successes, int Trials)> Counts { get; } = Gen.Int[1, 200].SelectMany(n => Gen.Int[0, n].Select(k => (k, n)));

    private static double Root(double outside, double inside, Func<double, double> excess)
    {
        for (var i = 0; i < 100; i++)
        {
            var middle = (outside + inside) / 2;
            if (excess(middle) > 0) outside = middle; else inside = middle;
        }
        return (outside + inside) / 2;
    }

    private static void AssertRange(double low, double high, WilsonInterval? range, double tolerance)
    {
        Assert.Equal(low, range!.Value.LowFraction, tolerance);
        Assert.Equal(high, range.Value.HighFraction, tolerance);
    }
}
