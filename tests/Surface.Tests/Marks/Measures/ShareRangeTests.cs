namespace Slantwise.Surface.Tests.Marks.Measures;

public class ShareRangeTests
{
    [Fact]
    public void Wilson_NoneOfTen_GoesUpToZSquaredOverNAndZSquared()
    {
        // By hand: the upper end is z² / (n + z²) = 3.84146 / 13.84146.
        var (low, high) = ShareRange.Wilson(0, 10);
        Assert.Equal(0, low, 1e-12);
        Assert.Equal(.2775328, high, 1e-6);
    }

    [Fact]
    public void Wilson_HalfOfTen_AsR()
    {
        // prop.test(5, 10, correct = FALSE) of R 4.2.2.
        var (low, high) = ShareRange.Wilson(5, 10);
        Assert.Equal(.2365930905, low, 1e-6);
        Assert.Equal(.7634069095, high, 1e-6);
    }

    [Fact]
    public void Below_NoHit_IsTheRuleOfThree() => Assert.Equal(3e-5, ShareRange.Below(0, 100_000), 1e-15);

    // qbeta(.95, hits + 1, count - hits) of R 4.2.2.
    [Theory]
    [InlineData(1, 100, .04655981145)]
    [InlineData(3, 1000, .007735244718)]
    public void Below_SomeHits_AsR(int hits, int count, double expected) => Assert.Equal(expected, ShareRange.Below(hits, count), 1e-7);

    [Fact]
    public void Below_NothingCounted_SaysNothing() => Assert.Equal(1, ShareRange.Below(0, 0));
}
