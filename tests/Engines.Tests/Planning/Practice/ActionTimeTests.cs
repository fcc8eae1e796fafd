using CsCheck;
using Slantwise.Engines.Planning.Practice;

namespace Slantwise.Engines.Tests.Planning.Practice;

public sealed class ActionTimeTests
{
    [Fact]
    public void HoldS_HalfReachIt_IsTheTargetOverTwoLogarithmsOfTwo()
    {
        // By hand: (1 − 1/2) / ln 2 of 10 s.
        Assert.Equal(10 * 0.5 / 0.693147180559945, ActionTime.HoldS(10, 0.5), 1e-12);
        Assert.Equal(10, ActionTime.HoldS(10, 1));
        Assert.Equal(ActionTime.HoldS(10, 1), ActionTime.HoldS(10, 1 - 1e-8), 1e-6);
    }

    [Fact]
    public void HoldS_AnyShare_IsTheAreaUnderTheShareStillHolding() => Gen.Select(Gen.Double[0.5, 60], Gen.Double[0.01, 0.99]).Sample((targetS, held) =>
    {
        // The plain second version: the area, by the middles of 2,000 strips.
        var area = Enumerable.Range(0, 2000).Sum(i => Math.Pow(held, (i + 0.5) / 2000)) * targetS / 2000;
        Assert.Equal(area, ActionTime.HoldS(targetS, held), 1e-5 * targetS);
        Assert.True(ActionTime.HoldS(targetS, held) < targetS);
    });

    [Fact]
    public void RepetitionsS_TenJumps_TakesTenTimesAsLong() => Assert.Equal(6, ActionTime.RepetitionsS(10, 0.6), 1e-12);

    [Fact]
    public void HoldS_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ActionTime.HoldS(0, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => ActionTime.HoldS(5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ActionTime.HoldS(5, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => ActionTime.RepetitionsS(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ActionTime.RepetitionsS(1, double.NaN));
    }
}
