using System.Globalization;
using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using static Slantwise.Surface.Tests.Desk.Balance.StudioPostures;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed class PostureComparisonTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly StudioUnits Statures = new(null, null);

    [Fact]
    public void Of_APostureAndItself_SaysThatNothingIsDifferent()
    {
        var comparison = PostureComparison.Of(Standing.Settle(), Standing.Settle(), Statures, English);
        Assert.Empty(comparison.Sentences);
        Assert.All(comparison.Rows, row => Assert.Equal(row.A, row.B));
    }

    [Fact]
    public void Of_TwoFeetAndOne_SaysThatOnlyTheFirstIsHeldAndLeavesOutRatiosThatMeanNothing()
    {
        // By hand: with the left foot lifted and nothing else moved the centre stays between the feet, outside the right one.
        var one = Standing with { Contacts = [RightFoot] };
        var comparison = PostureComparison.Of(Standing.Settle(), one.Settle(), Statures, English);
        Assert.Equal("only A can be held still", comparison.Sentences[0]);
        var margin = comparison.Rows.Single(r => r.What == "Distance to the nearest side");
        Assert.Equal("", margin.Difference);
        Assert.StartsWith("-", margin.B);
    }

    [Fact]
    public void Of_ATripod_ComparesTheWeightOnHandsAndHead()
    {
        var comparison = PostureComparison.Of(Standing.Settle(), Tripod.Settle(), Statures, English);
        var (hands, head) = (comparison.Rows.Single(r => r.What == "Weight on hands and arms"), comparison.Rows.Single(r => r.What == "Weight on the head"));
        Assert.Equal(("0%", "0%"), (hands.A, head.A));
        var (handsPercent, headPercent) = (int.Parse(hands.B.TrimEnd('%'), CultureInfo.InvariantCulture), int.Parse(head.B.TrimEnd('%'), CultureInfo.InvariantCulture));
        Assert.InRange(handsPercent + headPercent, 99, 101);
        Assert.DoesNotContain(comparison.Rows, r => r.Difference.Contains("better", StringComparison.Ordinal));
    }
}
