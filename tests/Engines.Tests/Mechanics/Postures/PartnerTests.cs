using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Engines.Tests.Mechanics.Postures;

public sealed class PartnerTests
{
    private static readonly Contact LeftFoot = new(ContactPart.Foot, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right);
    private static readonly Contact LeftHand = new(ContactPart.Hand, Side.Left), RightHand = new(ContactPart.Hand, Side.Right);

    [Fact]
    public void Of_TwoWhoLeanOut_EachFallsAloneAndThePullHoldsBoth()
    {
        var settled = LeaningOut(12).Settle();
        Assert.True(settled.IsTouching, $"gap {settled.GapH}");
        Assert.False(BodyBalance.Of(settled.Body).Margin.IsHeld);
        Assert.False(BodyBalance.Of(settled.Partner!).Margin.IsHeld);

        var balance = PostureBalance.Of(settled);
        Assert.True(balance.IsHeld);
        // By hand, moments about the heels of the first: pull times the height of the hands = weight times the way of the centre behind the heels.
        var heelH = settled.Body.Contacts.SelectMany(c => c.Outline).Min(p => p.XH);
        var behindH = heelH - settled.Body.Skeleton.CentreOfMass(BodyTable.Mean).XH;
        Assert.Equal(behindH, balance.Pull!.GentlestFraction * balance.Pull.HeightH, 1e-9);
        Assert.True(balance.Pull.GentlestFraction > 0);
        // Two alike: the pair's centre is half-way between them.
        var between = (settled.Body.Skeleton.CentreOfMass(BodyTable.Mean).XH + settled.Partner!.Skeleton.CentreOfMass(BodyTable.Mean).XH) / 2;
        Assert.Equal(between, balance.Whole.Centre.XH, 1e-12);
        Assert.Equal(.5, balance.Whole.Loads.Shares.Take(2).Sum(s => s.ShareFraction), 1e-6);
    }

    [Fact]
    public void Of_TwoWhoLeanOutFurther_PullMore() =>
        Assert.True(PostureBalance.Of(LeaningOut(16).Settle()).Pull!.GentlestFraction > PostureBalance.Of(LeaningOut(12).Settle()).Pull!.GentlestFraction);

    [Fact]
    public void Of_TwoWhoStandUpright_NeedNoPull() => Assert.Equal(0, PostureBalance.Of(LeaningOut(0).Settle()).Pull!.GentlestFraction);

    [Fact]
    public void Of_OneLeansOutAndOneStandsFarForward_NoPullHoldsBoth()
    {
        // The first needs a pull towards the partner, the partner one away from it.
        var settled = LeaningOut(14).Settle();
        var fallsIn = settled.Posture.Partner! with { Pose = Lean(-14, Math.PI) };
        var pull = PostureBalance.Of((settled.Posture with { Partner = fallsIn }).Settle()).Pull!;
        Assert.False(pull.IsHeld);
        Assert.True(double.IsNaN(pull.GentlestFraction));
    }

    [Fact]
    public void Of_OneCarriedOnTwoThighs_JoinsCarryTheWholePartner()
    {
        // A chair of two thighs and somebody standing on them: the weight of both is over the feet of one.
        var chair = Pose.Upright.Placed(.3, 0, 0).With(Joint.HipFlexion, Side.Middle, 1.4).With(Joint.KneeFlexion, Side.Middle, 1.5).With(Joint.AnkleFlexion, Side.Middle, .4);
        var stand = new Posture("chair", PostureGroup.Partner, chair, [LeftFoot, RightFoot])
        {
            Partner = new Partner(Pose.Upright, [], [new(LeftFoot, new(ContactPart.Thigh, Side.Left)), new(RightFoot, new(ContactPart.Thigh, Side.Right))]),
        };
        var settled = stand.Settle();
        var balance = PostureBalance.Of(settled);
        Assert.NotNull(balance.Carried);
        Assert.Null(balance.Pull);
        // The partner stands as upright alone: its margin is that of two feet on the floor.
        var alone = BodyBalance.Of(SettledBody.Of(Pose.Upright, [LeftFoot, RightFoot]));
        Assert.Equal(alone.Margin.MarginH, balance.Carried.Margin.MarginH, 1e-9);
        Assert.Equal(1, balance.Carried.Loads.Shares.Sum(s => s.ShareFraction), 1e-9);
        Assert.Equal((settled.Body.Skeleton.CentreOfMass(BodyTable.Mean).ZH + balance.Carried.Centre.ZH) / 2, balance.Whole.Centre.ZH, 1e-12);
    }

    [Fact]
    public void Of_PartnerWithoutAJoin_SaysWhatIsNeeded() => Assert.Throws<ArgumentException>(() =>
        new Posture("two", PostureGroup.Partner, Pose.Upright, [LeftFoot]) { Partner = new Partner(Pose.Upright, [LeftFoot], []) }.Settle());

    // Two face to face, straight as boards, hands joined, each tilted away from the other about the ankles.
    private static Posture LeaningOut(double outDeg) => new("lean", PostureGroup.Partner, Lean(outDeg, 0), [LeftFoot, RightFoot])
    {
        Partner = new Partner(Lean(outDeg, Math.PI), [LeftFoot, RightFoot], [new(LeftHand, RightHand), new(RightHand, LeftHand)]),
    };

    private static Pose Lean(double outDeg, double turnRad)
    {
        var outRad = outDeg * Math.PI / 180;
        return Pose.Upright.Placed(-outRad, 0, turnRad)
            .With(Joint.AnkleFlexion, Side.Middle, -outRad).With(Joint.ShoulderFlexion, Side.Middle, Math.PI / 2 - outRad);
    }
}
