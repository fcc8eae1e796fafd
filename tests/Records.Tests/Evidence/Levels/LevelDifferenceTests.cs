using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Levels;

namespace Slantwise.Records.Tests.Evidence.Levels;

public sealed class LevelDifferenceTests
{
    [Theory]
    // By hand: 1 logit harder turns one half into 1/(1 + e) = .2689; ranges by 1.6449 standard deviations.
    [InlineData(1, .3, .268941, .183408, .375998, LevelSide.Harder)]
    [InlineData(-1, .3, .731059, .624002, .816592, LevelSide.Easier)]
    [InlineData(.2, .3, .450166, .333255, .572857, LevelSide.Unclear)]
    public void Of_AContrast_IsSaidInTriesOfAnEvenChance(double mean, double sd, double about, double low, double high, LevelSide side)
    {
        var difference = LevelDifference.Of(new Estimate(mean, sd, .8, ResponseCaution.None))!;
        Assert.Equal(about, difference.OfEvenFraction, 1e-5);
        Assert.Equal(low, difference.LowOfEvenFraction, 1e-4);
        Assert.Equal(high, difference.HighOfEvenFraction, 1e-4);
        Assert.Equal(side, difference.Side);
        Assert.True(difference.IsLinked);
        Assert.False(difference.IsMostlyAssumed);
    }

    [Theory]
    [InlineData(ResponseCaution.Disconnected, false, false)]
    [InlineData(ResponseCaution.NoTrials | ResponseCaution.MostlyAssumption, false, true)]
    [InlineData(ResponseCaution.MostlyAssumption, true, true)]
    public void Of_AContrastWithCautions_CarriesThem(ResponseCaution cautions, bool isLinked, bool isAssumed)
    {
        var difference = LevelDifference.Of(new Estimate(1, 1, .2, cautions))!;
        Assert.Equal((isLinked, isAssumed), (difference.IsLinked, difference.IsMostlyAssumed));
    }

    [Fact]
    public void Of_Nothing_IsNone() => Assert.Null(LevelDifference.Of(null));
}
