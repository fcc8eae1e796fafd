using CsCheck;
using Slantwise.Records.Evidence.Levels;

namespace Slantwise.Records.Tests.Evidence.Levels;

public sealed class LevelChanceTests
{
    [Fact]
    public void IsTooWide_AnyRangeWiderThanTheRule_HoldsOneHalf() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
    {
        var (low, high) = (Math.Min(a, b), Math.Max(a, b));
        var chance = new LevelChance((low + high) / 2, low, high, false, 0);
        // The reason for the rule: what is too wide cannot even tell more from fewer than half.
        return !chance.IsTooWide || (low < .5 && high > .5);
    });

    [Theory]
    // After 5 tries at about .65 a range is .36 to .86, after 10 .42 to .83: own arithmetic with a spread of 1.2 and .2275 of information a try.
    [InlineData(.36, .86, false)]
    [InlineData(.42, .83, false)]
    // With no try at all, 1.2 standard deviations of pupils alone: .12 to .88 around one half.
    [InlineData(.12, .88, true)]
    public void IsTooWide_RangesOfPractice_FallOnTheirSide(double low, double high, bool expected) =>
        Assert.Equal(expected, new LevelChance((low + high) / 2, low, high, false, 0).IsTooWide);

    [Fact]
    public void Of_Nothing_IsNone() => Assert.Null(LevelChance.Of(null));
}
