using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class BalanceToleranceTests
{
    private static readonly Contact LeftFoot = new(ContactPart.Foot, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right);

    [Fact]
    public void Of_TwoFeetAndOneFoot_TwoForgiveMore()
    {
        var two = BalanceTolerance.Of(Pose.Upright, [LeftFoot, RightFoot]);
        var one = BalanceTolerance.Of(Pose.Upright.Placed(0, -.05, 0), [LeftFoot]);
        Assert.True(two.HeldFraction > one.HeldFraction, $"{two} against {one}");
        Assert.InRange(two.HeldFraction, .5, 1);
    }

    [Fact]
    public void Of_SameSeed_SameAnswerAndOthersNear()
    {
        var first = BalanceTolerance.Of(Pose.Upright, [LeftFoot, RightFoot], 3, 4000, 7);
        Assert.Equal(first, BalanceTolerance.Of(Pose.Upright, [LeftFoot, RightFoot], 3, 4000, 7));
        // Two samples of 4000: the shares differ by less than four standard errors of their difference, 4·√(2·.25/4000) = .045.
        Assert.Equal(first.HeldFraction, BalanceTolerance.Of(Pose.Upright, [LeftFoot, RightFoot], 3, 4000, 8).HeldFraction, .045);
    }

    [Fact]
    public void Of_OneAnkleOnOneFoot_ShiftIsHeightTimesError()
    {
        // By hand: on one rigid foot, the ankle's error e turns the whole body but that foot about the ankle: the centre moves by
        // e times its height above the ankle. The other joints add to it, so the spread is at least that.
        var body = SettledBody.Of(Pose.Upright, [LeftFoot]);
        var aboveAnkleH = body.Skeleton.CentreOfMass(BodyTable.Mean).ZH - BodyLengths.AnkleHeightH;
        var tolerance = BalanceTolerance.Of(Pose.Upright, [LeftFoot], 1, 10);
        Assert.InRange(tolerance.Spread.ForwardH, .95 * aboveAnkleH * Math.PI / 180, 2 * aboveAnkleH * Math.PI / 180);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(11)]
    [InlineData(double.NaN)]
    public void Of_ErrorOutsideItsRange_SaysWhatIsAllowed(double errorDeg) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BalanceTolerance.Of(Pose.Upright, [LeftFoot], errorDeg));
}
