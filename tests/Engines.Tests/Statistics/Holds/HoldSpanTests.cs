using CsCheck;
using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Engines.Tests.Statistics.Holds;

public sealed class HoldSpanTests
{
    // By hand, a watch of whole seconds.
    [Theory]
    [InlineData(10.0, 10.0, true, 10.0, null)]
    [InlineData(14.0, 10.0, true, 10.0, null)]
    [InlineData(null, 10.0, true, 10.0, null)]
    [InlineData(14.0, null, true, 14.0, null)]
    [InlineData(4.0, 10.0, false, 3.5, 4.5)]
    [InlineData(0.0, 10.0, false, 0.0, 0.5)]
    [InlineData(10.0, 10.0, false, 9.5, 10.0)]
    [InlineData(12.0, 10.0, false, 11.5, 12.5)]
    [InlineData(4.0, null, false, 3.5, 4.5)]
    [InlineData(null, 10.0, false, 0.0, 10.0)]
    public void Of_OneTry_IsWhatItSaysOfItsLength(double? held, double? dose, bool reached, double low, double? high) =>
        Assert.Equal(new HoldSpan(low, high), HoldSpan.Of(new HoldAttempt(held, dose, reached), 1));

    [Fact]
    public void Of_NothingKnown_IsNone()
    {
        Assert.Null(HoldSpan.Of(new HoldAttempt(null, null, false), 1));
        Assert.Null(HoldSpan.Of(new HoldAttempt(null, null, true), 1));
        Assert.Null(HoldSpan.Of(new HoldAttempt(0, null, true), 1));
    }

    [Fact]
    public void Time_OfATry_IsItsDoseOrItsFall()
    {
        Assert.Equal(new HoldTime(10, false, 3), HoldTime.Of(new HoldAttempt(14, 10, true), 3));
        Assert.Equal(new HoldTime(14, false), HoldTime.Of(new HoldAttempt(14, null, true)));
        Assert.Equal(new HoldTime(4, true), HoldTime.Of(new HoldAttempt(4, 10, false)));
        Assert.Null(HoldTime.Of(new HoldAttempt(null, 10, false)));
        Assert.Null(HoldTime.Of(new HoldAttempt(null, null, true)));
    }

    [Fact]
    public void Of_AnyTimedFall_HoldsTheTimeAndFits() => Gen.Select(Gen.Double[0, 60], Gen.Double[1, 60], Gen.Double[0.01, 2]).Sample((held, dose, resolution) =>
    {
        var span = HoldSpan.Of(new HoldAttempt(held, dose, false), resolution)!.Value;
        Assert.True(span.LowS <= held && span.LowS < span.HighS && span.HighS - span.LowS <= resolution + 1e-12);
        HoldFit.Fit(HoldLaw.LogLogistic, [new(span)], 1);
    });

    [Theory]
    [InlineData(-1.0, 5.0, 1)]
    [InlineData(1.0, 0.0, 1)]
    [InlineData(1.0, 5.0, 0)]
    public void Of_OutsideItsRange_Throws(double held, double dose, double resolution) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldSpan.Of(new HoldAttempt(held, dose, false), resolution));

    [Fact]
    public void Start_SixTriesByHand_AreThreeOfFive()
    {
        // By hand: falls at 0 and 0.8 s never started; a fall at 1 s, one at 4 s and a reached dose did; one failed untimed.
        HoldAttempt[] tries = [new(0, 5, false), new(.8, 5, false), new(1, 5, false), new(4, 5, false), new(null, 5, true), new(null, 5, false)];
        var start = HoldStart.Of(tries, 1);
        Assert.Equal(new HoldStart(5, 3, 1), start);
        Assert.Equal(WilsonInterval.Of(3, 5, 0.9), start.Range(0.9));
        Assert.Null(HoldStart.Of([], 1).Range(0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldStart.Of(tries, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldStart.Of([new(-1, 5, false)], 1));
    }

    [Fact]
    public void Information_TimedHold_IsTheMeanSquaredScore()
    {
        // By hand (1 − S³)/3: .2 gives .992/3, .65 gives .725375/3.
        Assert.Equal(.992 / 3, TimedHoldInformation.Of(.2), 1e-15);
        Assert.Equal(.725375 / 3, TimedHoldInformation.Of(.65), 1e-15);
        Gen.Double[0, 1].Sample(held =>
        {
            // The plain second version: in the share u that has fallen, a fall at u scores 1 − 2u and a hold to the end scores the share fallen.
            const int steps = 2000;
            var (sum, width) = (0.0, (1 - held) / steps);
            for (var i = 0; i < steps; i++) sum += width * Math.Pow(1 - 2 * (i + .5) * width, 2);
            Assert.Equal(sum + held * (1 - held) * (1 - held), TimedHoldInformation.Of(held), 1e-6);
            Assert.True(TimedHoldInformation.Of(held) >= held * (1 - held) - 1e-15);
        });
        Assert.Throws<ArgumentOutOfRangeException>(() => TimedHoldInformation.Of(1.1));
    }
}
