using Slantwise.Records.Evidence.Live;

namespace Slantwise.Records.Tests.Evidence.Live;

public sealed class TriesBesideRangeTests
{
    // By hand, the binomial law: .6^10 = .006; .6^10 + 10 · .4 · .6^9 = .046; with two .167; .8^10 = .107; .7^10 = .028; .7^5 = .168; .5^5 = .031.
    [Theory]
    [InlineData(0, 10, .4, .8, TodaysTries.Fewer)]
    [InlineData(1, 10, .4, .8, TodaysTries.Fewer)]
    [InlineData(2, 10, .4, .8, TodaysTries.AsExpected)]
    [InlineData(10, 10, .4, .8, TodaysTries.AsExpected)]
    [InlineData(10, 10, .3, .7, TodaysTries.More)]
    [InlineData(5, 5, .1, .7, TodaysTries.AsExpected)]
    [InlineData(5, 5, .1, .5, TodaysTries.More)]
    [InlineData(0, 0, .9, .95, TodaysTries.AsExpected)]
    [InlineData(0, 5, 0, 1, TodaysTries.AsExpected)]
    [InlineData(4, 5, .99, 1, TodaysTries.Fewer)]
    public void Of_TriesOfOneLesson_FitUnlessRareAtTheEndOfTheRange(int successes, int trials, double low, double high, TodaysTries expected) =>
        Assert.Equal(expected, TriesBesideRange.Of(successes, trials, low, high));
}
