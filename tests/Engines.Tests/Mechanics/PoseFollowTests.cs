using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class PoseFollowTests
{
    private static readonly Contact LeftFoot = new(ContactPart.Foot, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right);
    private static readonly Point3 FromTheSide = new(0, 1, 0), FromTheFront = new(1, 0, 0);

    [Fact]
    public void Fit_WristLiftedAQuarterStature_TheWristIsThereAndTheFeetStay()
    {
        var start = Standing();
        var wish = Wrist(start, Side.Left) + new Point3(.15, 0, .25);
        var found = Follow(start, new PoseGoal.Seen(SegmentKind.Hand, Side.Left, new(0, 0, 0), wish, FromTheSide));
        var wrist = Wrist(found.Placed, Side.Left);
        Assert.InRange(Math.Abs(wrist.XH - wish.XH) + Math.Abs(wrist.ZH - wish.ZH), 0, .005);
        Assert.InRange(found.MissedH, 0, .005);
        Assert.Empty(found.Stops);
        FeetStay(start, found);
    }

    [Fact]
    public void Fit_WristFarAbove_ReachesTheLengthOfTheArmAndSaysThatTheElbowIsStraight()
    {
        // By hand: with the trunk upright the wrist gets to shoulder + upper arm + forearm = .818 + .186 + .146 = 1.150 H. A lean of up to 40°
        // to the other side lifts the shoulder, .109 H from the middle, by at most .109 · sin 40° = .070 H more.
        var start = Standing();
        var wish = Wrist(start, Side.Left) with { ZH = 1.6 };
        var found = Follow(start, new PoseGoal.Seen(SegmentKind.Hand, Side.Left, new(0, 0, 0), wish, FromTheSide));
        Assert.InRange(Wrist(found.Placed, Side.Left).ZH, 1.150, 1.220);
        Assert.InRange(found.MissedH, .38, .45);
        Assert.Contains(found.Stops, s => s is { Joint: Joint.ElbowFlexion, Side: Side.Left, Kind: JointStopKind.Straight });
        FeetStay(start, found);
    }

    [Fact]
    public void Fit_HipsDownBetweenTheFeet_BendsTheKnees()
    {
        // By hand: with flat feet the shins lean by at most the ankle's 35°; shins and thighs, .246 and .245 H, then come down by .09 H.
        var start = Standing();
        var hips = start.Pelvis.Origin;
        var found = Follow(start, new PoseGoal.Seen(SegmentKind.LowerTrunk, Side.Middle, new(0, 0, 0), hips with { ZH = hips.ZH - .08 }, FromTheSide));
        Assert.InRange(found.Placed.Pelvis.Origin.ZH, hips.ZH - .085, hips.ZH - .075);
        Assert.True(found.Placed.Pose.AngleRad(Joint.KneeFlexion, Side.Left) > .5);
        Assert.Equal(found.Placed.Pose.AngleRad(Joint.KneeFlexion, Side.Left), found.Placed.Pose.AngleRad(Joint.KneeFlexion, Side.Right), 1e-6);
        FeetStay(start, found);
    }

    [Fact]
    public void Fit_HipsDownTooFarWithFlatFeet_SaysThatTheAnklesStop()
    {
        var start = Standing();
        var hips = start.Pelvis.Origin;
        var found = Follow(start, new PoseGoal.Seen(SegmentKind.LowerTrunk, Side.Middle, new(0, 0, 0), hips with { ZH = hips.ZH - .3 }, FromTheSide));
        Assert.Contains(found.Stops, s => s is { Joint: Joint.AnkleFlexion, Side: Side.Left, Kind: JointStopKind.Most });
        FeetStay(start, found);
    }

    [Fact]
    public void Fit_FootMovedSideways_MovesItsPrintAndLeavesTheOtherFoot()
    {
        var start = Standing();
        var was = Lowest(start, LeftFoot);
        var found = PoseFollow.Fit(start, start,
            [.. Kept(start, RightFoot), new PoseGoal.OnFloor(LeftFoot), new PoseGoal.Along(LeftFoot, new(1, 0))],
            [new PoseGoal.Placed(LeftFoot, was.OnFloor + new Point2(.1, .15))]);
        Assert.InRange((Lowest(found.Placed, LeftFoot) - was - new Point3(.1, .15, 0)).LengthH, 0, .006);
        Assert.InRange((Lowest(found.Placed, RightFoot) - Lowest(start, RightFoot)).LengthH, 0, .001);
    }

    [Fact]
    public void Fit_HandPulledBelowTheFloor_StaysAboveItWhereThatIsKept()
    {
        var start = Standing();
        var found = PoseFollow.Fit(start, start,
            [.. Kept(start, LeftFoot), .. Kept(start, RightFoot), new PoseGoal.Above(SegmentKind.Hand, Side.Left, new(0, 0, 0), .02)],
            [new PoseGoal.Seen(SegmentKind.Hand, Side.Left, new(0, 0, 0), new(.2, .1, -.2), FromTheSide)]);
        Assert.InRange(Wrist(found.Placed, Side.Left).ZH, .019, .05);
    }

    [Fact]
    public void Fit_RandomDrags_StayInTheLimitsKeepTheContactsAndRepeat()
    {
        var random = new Random(20260713);
        for (var i = 0; i < 60; i++)
        {
            var start = Standing();
            var wish = Wrist(start, Side.Right) + new Point3(random.NextDouble() - .5, random.NextDouble() - .5, 1.5 * random.NextDouble() - .6);
            var goal = new PoseGoal.Seen(SegmentKind.Hand, Side.Right, new(0, 0, 0), wish, i % 2 == 0 ? FromTheSide : FromTheFront);
            var found = Follow(start, goal);
            FeetStay(start, found);
            var repeated = Follow(start, goal).Placed;
            Assert.Equal(found.Placed.Pelvis, repeated.Pelvis);
            foreach (var joint in Enum.GetValues<Joint>())
            {
                var (leastDeg, mostDeg) = JointLimits.Of(joint);
                foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                {
                    var angleRad = found.Placed.Pose.AngleRad(joint, side);
                    Assert.InRange(angleRad * 180 / Math.PI, leastDeg - 1e-9, mostDeg + 1e-9);
                    Assert.Equal(angleRad, repeated.Pose.AngleRad(joint, side));
                }
            }
            // The pose alone, without where it is, says the same: bow, lean and turn are those of the pelvis.
            var again = SettledBody.Of(found.Placed.Pose, [LeftFoot, RightFoot]);
            Assert.True(again.IsTouching, $"seed 20260713, drag {i}: gap {again.GapH}");
            var turned = again.Skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle).Turned;
            Assert.InRange((turned.X - found.Placed.Pelvis.Turned.X).LengthH + (turned.Z - found.Placed.Pelvis.Turned.Z).LengthH, 0, .02);
        }
    }

    [Theory]
    [InlineData(.3, .2, -.4)]
    [InlineData(Math.PI / 2, .3, 0)]
    [InlineData(3.0, -.2, .5)]
    [InlineData(-1.2, .1, 2.9)]
    public void Of_AnyPelvis_GivesBowLeanAndTurnThatTurnItSo(double bowRad, double leanRad, double turnRad)
    {
        var body = SettledBody.Of(Pose.Upright.Placed(bowRad, leanRad, turnRad), [new(ContactPart.Seat, Side.Middle)]);
        var placed = PlacedPose.Of(Pose.Upright.Placed(bowRad + .1, leanRad, turnRad), body);
        Assert.Equal(bowRad, placed.Pose.BowRad, 1e-6);
        var (was, now) = (Rotation.Turn(turnRad) * (Rotation.Bow(bowRad) * Rotation.Lean(leanRad)), Skeleton.Of(placed.Pose).Frame(SegmentKind.LowerTrunk, Side.Middle).Turned);
        Assert.InRange((was.X - now.X).LengthH + (was.Y - now.Y).LengthH + (was.Z - now.Z).LengthH, 0, 1e-9);
    }

    [Fact]
    public void Fit_NothingKeptOrWanted_SaysWhatIsNeeded()
    {
        var start = Standing();
        Assert.Throws<ArgumentException>(() => PoseFollow.Fit(start, start, [], [new PoseGoal.OnFloor(LeftFoot)]));
        Assert.Throws<ArgumentException>(() => PoseFollow.Fit(start, start, [new PoseGoal.OnFloor(LeftFoot)], []));
    }

    private static PlacedPose Standing()
    {
        var pose = Pose.Upright.With(Joint.ElbowFlexion, Side.Middle, .2).With(Joint.KneeFlexion, Side.Middle, .1).With(Joint.HipFlexion, Side.Middle, .1);
        return PlacedPose.Of(pose, SettledBody.Of(pose, [LeftFoot, RightFoot]));
    }

    private static PoseFollow Follow(PlacedPose start, PoseGoal wish) => PoseFollow.Fit(start, start, [.. Kept(start, LeftFoot), .. Kept(start, RightFoot)], [wish]);

    private static PoseGoal[] Kept(PlacedPose start, Contact foot) =>
        [new PoseGoal.Placed(foot, Lowest(start, foot).OnFloor), new PoseGoal.Along(foot, new(1, 0))];

    private static void FeetStay(PlacedPose start, PoseFollow found)
    {
        foreach (var foot in new[] { LeftFoot, RightFoot })
        {
            Assert.InRange((Lowest(found.Placed, foot) with { ZH = 0 } - Lowest(start, foot) with { ZH = 0 }).LengthH, 0, .001);
            Assert.InRange(Math.Abs(Lowest(found.Placed, foot).ZH), 0, SettledBody.TouchingH);
        }
    }

    private static Point3 Wrist(PlacedPose at, Side side) => at.Skeleton().Frame(SegmentKind.Hand, side).Origin;

    private static Point3 Lowest(PlacedPose at, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        return patch.Lowest(at.Skeleton().Frame(patch.Segment, contact.Side));
    }
}
