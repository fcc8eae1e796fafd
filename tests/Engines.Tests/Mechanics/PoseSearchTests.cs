using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class PoseSearchTests
{
    private static readonly Contact LeftHand = new(ContactPart.Hand, Side.Left), RightHand = new(ContactPart.Hand, Side.Right);
    private static readonly Contact LeftKnee = new(ContactPart.Knee, Side.Left), RightKnee = new(ContactPart.Knee, Side.Right);
    private static readonly Contact LeftElbow = new(ContactPart.Elbow, Side.Left), RightElbow = new(ContactPart.Elbow, Side.Right);
    private static readonly Contact Crown = new(ContactPart.Crown, Side.Middle);

    [Fact]
    public void Fit_HandsAndCrownWithKneesOnElbows_FindsATripodThatTouches()
    {
        var guess = Tripod(150, 60, 110);
        var found = PoseSearch.Fit(guess, [
            new PoseGoal.OnFloor(LeftHand), new PoseGoal.OnFloor(RightHand), new PoseGoal.OnFloor(Crown),
            new PoseGoal.Flat(LeftHand), new PoseGoal.Flat(RightHand),
            new PoseGoal.Resting(LeftKnee, LeftElbow), new PoseGoal.Resting(RightKnee, RightElbow),
        ]);
        Assert.True(found.IsFound, $"missed by {found.MissedH} H after {found.RoundCount} rounds");
        var body = SettledBody.Of(found.Pose, [LeftHand, RightHand, Crown]);
        Assert.True(body.IsTouching, $"gap {body.GapH} H");
        foreach (var joint in Enum.GetValues<Joint>())
        {
            var (leastDeg, mostDeg) = JointLimits.Of(joint);
            foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                Assert.InRange(found.Pose.AngleRad(joint, side) * 180 / Math.PI, leastDeg - 1e-9, mostDeg + 1e-9);
        }
    }

    [Fact]
    public void Fit_CrownAndFeetAtOnce_SaysThatItMisses()
    {
        // Nobody's crown is three statures in front of their feet.
        var found = PoseSearch.Fit(Pose.Upright, [
            new PoseGoal.OnFloor(Crown), new PoseGoal.OnFloor(new(ContactPart.Foot, Side.Left)),
            new PoseGoal.Apart(Crown, new(ContactPart.Foot, Side.Left), new Point2(3, 0)),
        ]);
        Assert.False(found.IsFound);
    }

    [Fact]
    public void Fit_NoGoal_SaysWhatIsNeeded() => Assert.Throws<ArgumentException>(() => PoseSearch.Fit(Pose.Upright, []));

    private static Pose Tripod(double bowDeg, double shoulderDeg, double elbowDeg)
    {
        static double Rad(double deg) => deg * Math.PI / 180;
        return Pose.Upright.Placed(Rad(bowDeg), 0, 0)
            .With(Joint.ShoulderFlexion, Side.Middle, Rad(shoulderDeg)).With(Joint.ElbowFlexion, Side.Middle, Rad(elbowDeg))
            .With(Joint.HipFlexion, Side.Middle, Rad(100)).With(Joint.KneeFlexion, Side.Middle, Rad(120))
            .With(Joint.ForearmPronation, Side.Middle, Rad(80)).With(Joint.WristExtension, Side.Middle, Rad(80));
    }
}
