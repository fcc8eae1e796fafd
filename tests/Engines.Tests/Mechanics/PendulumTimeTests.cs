using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class PendulumTimeTests
{
    [Fact]
    // By hand: √(.56 · 1.40 / 9.80665) = .28274 s.
    public void OfS_StandingChild_RootOfHeightOverGravity() => Assert.Equal(.28274, PendulumTime.OfS(.56, 1.40), 1e-5);

    [Fact]
    public void OfS_FourTimesAsHigh_TwiceAsSlow() => Assert.Equal(2, PendulumTime.OfS(.8, 1.5) / PendulumTime.OfS(.2, 1.5), 1e-12);

    [Theory]
    [InlineData(0, 1.4)]
    [InlineData(.5, 0)]
    [InlineData(double.NaN, 1.4)]
    public void OfS_NothingAboveTheFloor_SaysWhatIsAllowed(double centreHeightH, double statureM) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PendulumTime.OfS(centreHeightH, statureM));
}
