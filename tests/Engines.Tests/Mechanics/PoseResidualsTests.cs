using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class PoseResidualsTests
{
    private static readonly Contact LeftHand = new(ContactPart.Hand, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right), Crown = new(ContactPart.Crown, Side.Middle);

    public static TheoryData<string> Kinds => [.. Goals.Keys];

    private static readonly Dictionary<string, PoseGoal> Goals = new()
    {
        ["floor"] = new PoseGoal.OnFloor(LeftHand),
        ["flat"] = new PoseGoal.Flat(LeftHand),
        ["flat foot"] = new PoseGoal.Flat(RightFoot),
        ["apart"] = new PoseGoal.Apart(Crown, RightFoot, new(.1, .2)),
        ["resting"] = new PoseGoal.Resting(new(ContactPart.Knee, Side.Left), new(ContactPart.Elbow, Side.Right)),
        ["centre"] = new PoseGoal.CentreOver(LeftHand, new(.1, 0)),
        ["angle"] = new PoseGoal.Angle(Joint.HipAbduction, Side.Right, .3),
        ["middle angle"] = new PoseGoal.Angle(Joint.NeckTurn, Side.Middle, .3),
        ["placed"] = new PoseGoal.Placed(RightFoot, new(.3, .1)),
        ["turned"] = new PoseGoal.Turned(LeftHand, Rotation.Bow(.4) * Rotation.Turn(.2)),
        ["along"] = new PoseGoal.Along(new(ContactPart.Shank, Side.Left), new(.5, .2)),
        ["along toes"] = new PoseGoal.Along(new(ContactPart.Toes, Side.Right), new(1, -.2)),
        ["along foot"] = new PoseGoal.Along(RightFoot, new(1, -.2)),
        ["above"] = new PoseGoal.Above(SegmentKind.Shank, Side.Left, new(0, 0, -.1), 2),
        ["facing"] = new PoseGoal.Facing(new(1, .3)),
        ["held"] = new PoseGoal.Held(LeftHand, new(.2, .1, .5)),
        ["seen"] = new PoseGoal.Seen(SegmentKind.Forearm, Side.Right, new(0, 0, -.1), new(.2, .1, .5), new(.6, .8, .1)),
        ["seen head"] = new PoseGoal.Seen(SegmentKind.Head, Side.Middle, new(0, 0, .2), new(.2, .1, .5), new(0, 1, 0)),
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void WithSlopes_EveryUnknown_AgreesWithDifferences(string kind)
    {
        // The plain second version: what each number does when one unknown moves a little, both ways.
        const double step = 1e-6;
        var chain = new PoseChain(Twisted());
        var (missedH, slopes) = PoseResiduals.WithSlopes(chain, [Goals[kind]]);
        Assert.Equal(PoseResiduals.MissedH(chain, [Goals[kind]]), missedH);
        Assert.Contains(slopes, s => Math.Abs(s) > .01);
        for (var u = 0; u < PoseChain.UnknownCount; u++)
        {
            var by = new double[PoseChain.UnknownCount];
            by[u] = step;
            var more = PoseResiduals.MissedH(chain.Stepped(by), [Goals[kind]]);
            by[u] = -step;
            var less = PoseResiduals.MissedH(chain.Stepped(by), [Goals[kind]]);
            for (var row = 0; row < 3; row++)
                Assert.True(Math.Abs((more[row] - less[row]) / (2 * step) - slopes[row * PoseChain.UnknownCount + u]) < 1e-7,
                    $"{kind}, unknown {u}, row {row}: {(more[row] - less[row]) / (2 * step)} by differences, {slopes[row * PoseChain.UnknownCount + u]} by formula");
        }
    }

    private static PlacedPose Twisted()
    {
        var (pose, number) = (Pose.Upright, 0);
        foreach (var joint in Enum.GetValues<Joint>())
            foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
            {
                var (leastDeg, mostDeg) = JointLimits.Of(joint);
                // By hand: somewhere inside each range, nowhere alike.
                pose = pose.With(joint, side, Math.PI / 180 * (leastDeg + (.25 + .017 * number++) * (mostDeg - leastDeg)));
            }
        return new PlacedPose(pose, new SegmentFrame(new(.1, -.2, .6), Rotation.Turn(.4) * (Rotation.Bow(.7) * Rotation.Lean(-.3))));
    }
}
