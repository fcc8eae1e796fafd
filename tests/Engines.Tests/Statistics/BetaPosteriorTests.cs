using System.Numerics;
using CsCheck;
using Slantwise.Engines.Statistics;

namespace Slantwise.Engines.Tests.Statistics;

public sealed class BetaPosteriorTests
{
    [Fact]
    public void Of_FiveOfFiveByHand_IsAPowerOfTheEdge()
    {
        // By hand: after five successes the density is 6 p⁵, so P(p < x) = x⁶: .6⁶ = .046656, .9⁶ = .531441.
        var chances = BetaPosterior.Of(5, 5, 0.6, 0.9);
        Assert.Equal(0.046656, chances.BelowFraction, 1e-14);
        Assert.Equal(0.531441 - 0.046656, chances.WithinFraction, 1e-14);
        Assert.Equal(1 - 0.531441, chances.AboveFraction, 1e-14);
        Assert.Equal(6 / 7.0, chances.MeanFraction, 1e-15);
    }

    [Fact]
    public void Of_TwoOfFiveByHand_IsABinomialTail()
    {
        // By hand: P(p < .6 | 2 of 5) = P(X ≥ 3), X binomial (6, .6)
        //        = 20·.6³·.4³ + 15·.6⁴·.4² + 6·.6⁵·.4 + .6⁶ = .27648 + .31104 + .186624 + .046656 = .8208.
        Assert.Equal(0.8208, BetaPosterior.Of(2, 5, 0.6, 0.9).BelowFraction, 1e-14);
    }

    [Fact]
    public void Of_AnyCount_AgreesWithTheBinomialTailInExactFractions() => WilsonIntervalTests.Counts.Sample(c =>
    {
        var (k, n) = c;
        var chances = BetaPosterior.Of(k, n, 0.6, 0.9);
        Assert.Equal(Tail(k, n, 6), chances.BelowFraction, 1e-11);
        Assert.Equal(1 - Tail(k, n, 9), chances.AboveFraction, 1e-11);
        Assert.Equal(1, chances.BelowFraction + chances.WithinFraction + chances.AboveFraction, 1e-11);
    });

    [Fact]
    public void Of_AnyCount_OneMoreSuccessMovesUp() => WilsonIntervalTests.Counts.Where(c => c.Successes < c.Trials).Sample(c =>
    {
        var before = BetaPosterior.Of(c.Successes, c.Trials, 0.6, 0.9);
        var after = BetaPosterior.Of(c.Successes + 1, c.Trials, 0.6, 0.9);
        Assert.True(after.BelowFraction <= before.BelowFraction && after.AboveFraction >= before.AboveFraction);
    });

    [Fact]
    public void Of_NoTrial_IsTheWidthOfTheParts()
    {
        var chances = BetaPosterior.Of(0, 0, 0.6, 0.9);
        Assert.Equal(0.6, chances.BelowFraction, 1e-14);
        Assert.Equal(0.3, chances.WithinFraction, 1e-14);
        Assert.Equal(0.1, chances.AboveFraction, 1e-14);
    }

    // The chances behind these, to three digits: 0/5 .996 below; 2/5 .821 below; 3/5 .544; 5/5 .469 above;
    // 12/15 .866 within; 24/30 .957 within; 30/30 .9^31 = .038 short of certain. From the binomial tails above.
    [Theory]
    [InlineData(0, 4, SuccessReading.NotEnoughTries)]
    [InlineData(0, 5, SuccessReading.Below)]
    [InlineData(2, 5, SuccessReading.Below)]
    [InlineData(3, 5, SuccessReading.NotEnoughTries)]
    [InlineData(5, 5, SuccessReading.NotEnoughTries)]
    [InlineData(12, 15, SuccessReading.Within)]
    [InlineData(24, 30, SuccessReading.Within)]
    [InlineData(30, 30, SuccessReading.Above)]
    public void Read_FromFiveTriesAtFourInFive_SaysOnlyWhatTheTriesCan(int successes, int trials, SuccessReading expected) =>
        Assert.Equal(expected, BetaPosterior.Of(successes, trials, 0.6, 0.9).Read(5, 0.8));

    [Theory]
    [InlineData(-1, 5, 0.6, 0.9)]
    [InlineData(6, 5, 0.6, 0.9)]
    [InlineData(3, 5, -0.1, 0.9)]
    [InlineData(3, 5, 0.9, 0.6)]
    [InlineData(3, 5, 0.6, 1.1)]
    public void Of_OutsideItsRange_Throws(int successes, int trials, double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BetaPosterior.Of(successes, trials, low, high));

    [Fact]
    public void Read_AtHalfCertainty_Throws()
    {
        var chances = BetaPosterior.Of(3, 5, 0.6, 0.9);
        Assert.Throws<ArgumentOutOfRangeException>(() => chances.Read(5, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => chances.Read(0, 0.8));
    }

    // The plain second version: P(X ≥ k + 1), X binomial (n + 1, tenths / 10), summed in whole numbers.
    private static double Tail(int k, int n, int tenths)
    {
        BigInteger sum = 0, binomial = 1;
        for (var j = 0; j <= n + 1; j++)
        {
            if (j > k) sum += binomial * BigInteger.Pow(tenths, j) * BigInteger.Pow(10 - tenths, n + 1 - j);
            binomial = binomial * (n + 1 - j) / (j + 1);
        }
        return (double)(sum * BigInteger.Pow(10, 20) / BigInteger.Pow(10, n + 1)) / 1e20;
    }

    // Source: [R2022] binom.test(x, n), 95 %, thirteen digits printed: Clopper and Pearson's ends.
    [Theory]
    [InlineData(3, 5, 0.1466327996347, 0.9472550495)]
    [InlineData(81, 263, 0.2527367455853, 0.3676219226)]
    [InlineData(1, 29, 0.0008726468836, 0.1776442955)]
    [InlineData(7, 10, 0.3475471499400, 0.9332604888)]
    public void Of_EndsOfTheExactInterval_LeavesOneFortiethBeyondEach(int successes, int trials, double low, double high)
    {
        // No interval of ours, but its ends are points of two beta laws: of one success fewer below, and of one failure fewer above.
        Assert.Equal(.025, BetaPosterior.Of(successes - 1, trials - 1, low, 1).BelowFraction, 1e-8);
        Assert.Equal(.025, BetaPosterior.Of(successes, trials - 1, 0, high).AboveFraction, 1e-8);
    }
}
