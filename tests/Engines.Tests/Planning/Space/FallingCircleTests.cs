using Slantwise.Engines.Planning.Space;

namespace Slantwise.Engines.Tests.Planning.Space;

public sealed class FallingCircleTests
{
    // By hand: 1.2 · 1.5 + .3.
    [Fact]
    public void RadiusM_OfAPosture_IsItsHeightAndTheMargin() => Assert.Equal(2.1, FallingCircle.RadiusM(1.2, 1.5, 0.3), 1e-12);

    [Theory]
    [InlineData(1.6, 1.5, 0)]
    [InlineData(1, 0, 0)]
    [InlineData(1, 1.5, -0.1)]
    [InlineData(double.NaN, 1.5, 0)]
    public void RadiusM_OutsideItsRange_Throws(double heightH, double statureM, double marginM) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FallingCircle.RadiusM(heightH, statureM, marginM));
}
