using CsCheck;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Engines.Planning.Queues;

namespace Slantwise.Engines.Tests.Planning.Practice;

public sealed class PracticeRangesTests
{
    private static readonly PracticePlan Plain = PracticeOutlookTests.Plain with { RestS = 20, TrialsASet = 10 };

    [Fact]
    public void Of_NobodyVaries_GivesTheFormulasAnswer() => PracticeOutlookTests.Plans.Sample(plan =>
    {
        var (ranges, outlook) = (PracticeRanges.Of(plan, new(0, 0), 20, 1), PracticeOutlook.Of(plan));
        Assert.Equal(new(outlook.FewestTrials, outlook.FewestTrials, outlook.FewestTrials), ranges.FewestTrials);
        Assert.Equal(new(outlook.MostTrials, outlook.MostTrials, outlook.MostTrials), ranges.MostTrials);
        Assert.Equal(outlook.WaitingFraction, ranges.WaitingFraction.MedianFraction, 1e-12);
        Assert.Equal(outlook.LastDoneS, ranges.LastDoneS.HighS, 1e-9);
    }, iter: 40);

    [Fact]
    public void Of_SameSeed_GivesTheSameBits()
    {
        var (first, second) = (PracticeRanges.Of(Plain, TimeSpread.Usual, 50, 11), PracticeRanges.Of(Plain, TimeSpread.Usual, 50, 11));
        Assert.Equal(first, second);
        Assert.NotEqual(first.LastDoneS, PracticeRanges.Of(Plain, TimeSpread.Usual, 50, 12).LastDoneS);
    }

    [Fact]
    public void Of_PeopleWhoVary_FewestHaveFewerThanTheFormulaSays()
    {
        var ranges = PracticeRanges.Of(Plain, TimeSpread.Usual, 400, 3);
        var outlook = PracticeOutlook.Of(Plain);
        Assert.True(ranges.FewestTrials.Median < outlook.FewestTrials);
        Assert.True(ranges.FewestTrials.Low <= ranges.FewestTrials.Median && ranges.FewestTrials.Median <= ranges.MiddleTrials.Median && ranges.MiddleTrials.Median <= ranges.MostTrials.Median);
        Assert.True(ranges.LastDoneS.LowS < ranges.LastDoneS.MedianS && ranges.LastDoneS.MedianS < ranges.LastDoneS.HighS);
        Assert.InRange(ranges.InTimeRuns, 0, 400);
    }

    [Fact]
    public void Of_InTimeRuns_AgreesWithTheRangeOfTheLast()
    {
        // The lesson ends where 19 of 20 lessons are done; by the ranges' own ranks.
        var range = PracticeRanges.Of(Plain, TimeSpread.Usual, 400, 3);
        var again = PracticeRanges.Of(Plain with { LessonS = range.LastDoneS.HighS }, TimeSpread.Usual, 400, 3);
        Assert.Equal(range.LastDoneS.HighS, again.LastDoneS.HighS, 1e-6);
        Assert.InRange(again.InTimeRuns, 379, 381);
    }

    // Source: [GrossHarris1998] section 2.7 for the formula. One queue, times without a memory, a lesson of four hours: waiting is the formula's share within 4 standard errors of
    // the mean over runs, which the median stands for; the start, when all come at once, is part of it and is small in four hours.
    [Theory]
    [InlineData(28, 10)]
    [InlineData(12, 3)]
    public void Of_TimesWithoutMemory_WaitingIsTheFormulas(int pupils, int mats)
    {
        var plan = PracticeOutlookTests.Plain with { PupilCount = pupils, MatCount = mats, Use = MatUse.OneQueue, RestS = 60, LessonS = 4 * 3600 };
        var ranges = PracticeRanges.Of(plan, TimeSpread.Usual, 200, 5, TimeLaw.Exponential);
        var queue = MachineRepair.Of(pupils, mats, plan.AwayS, plan.TurnS);
        var sd = (ranges.WaitingFraction.HighFraction - ranges.WaitingFraction.LowFraction) / (2 * 1.645);
        Assert.Equal(queue.WaitingCount / pupils, ranges.WaitingFraction.MedianFraction, 4 * 1.253 * sd / Math.Sqrt(200) + 0.003);
    }

    [Theory]
    [InlineData(19, 0.3, 0.2)]
    [InlineData(100_001, 0.3, 0.2)]
    [InlineData(20, -0.1, 0.2)]
    [InlineData(20, 0.3, 1.6)]
    [InlineData(20, double.NaN, 0)]
    public void Of_OutsideItsRange_Throws(int runs, double turnSd, double pupilSd) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeRanges.Of(Plain, new(turnSd, pupilSd), runs, 1));
}
