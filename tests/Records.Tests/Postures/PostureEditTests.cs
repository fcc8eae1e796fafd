using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Records.Tests.Postures;

public sealed class PostureEditTests
{
    private static readonly Point3 FromTheSide = new(0, 1, 0);

    public static TheoryData<string> Keys => [.. PostureLibrary.All.Where(p => p.Partner is null).Select(p => p.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Follow_TheHeadOfAnyPostureDragged_KeepsEveryContactAndEveryLimit(string key)
    {
        var start = PostureLibrary.Find(key)!.Settle();
        var edit = PostureEdit.Of(start);
        var head = start.Body.Skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, .1));
        for (var step = 1; step <= 5; step++)
        {
            var wish = head + new Point3(.02 * step, .015 * step, .02 * step);
            var move = edit.Follow([new PoseGoal.Seen(SegmentKind.Head, Side.Middle, new(0, 0, .1), wish, FromTheSide)], []);
            Assert.True(move.Settled.IsTouching);
            foreach (var (was, now) in start.Body.Contacts.Zip(move.Settled.Body.Contacts))
                Assert.True((now.Middle + move.Shift - was.Middle).LengthH < .004, $"{was.Contact} moved by {(now.Middle + move.Shift - was.Middle).LengthH} H at step {step}");
            foreach (var joint in Enum.GetValues<Joint>())
                foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                    Assert.InRange(move.Settled.Posture.Pose.AngleRad(joint, side) * 180 / Math.PI, JointLimits.Of(joint).LeastDeg - 1e-6, JointLimits.Of(joint).MostDeg + 1e-6);
        }
    }

    [Fact]
    public void Follow_AHandPutElsewhere_MovesItsPrintAndNoOther()
    {
        var start = PostureLibrary.Find("bear")!.Settle();
        var hand = start.Body.Contacts.First(c => c.Contact == new Contact(ContactPart.Hand, Side.Left));
        var wish = hand.Middle + new Point2(.03, .05);
        var move = PostureEdit.Of(start).Follow([new PoseGoal.Placed(hand.Contact, wish)], [hand.Contact]);
        Assert.True(move.IsMet);
        foreach (var (was, now) in start.Body.Contacts.Zip(move.Settled.Body.Contacts))
            Assert.InRange((now.Middle + move.Shift - (was.Contact == hand.Contact ? wish : was.Middle)).LengthH, 0, .006);
    }

    [Fact]
    public void Follow_TheSameDragTwice_GivesTheSamePosture()
    {
        var start = PostureLibrary.Find("lunge")!.Settle();
        PostureMove Once() => PostureEdit.Of(start).Follow([new PoseGoal.Seen(SegmentKind.LowerTrunk, Side.Middle, new(0, 0, 0), new(.05, 0, .4), FromTheSide)], []);
        Assert.Equal(PostureText.Write(Once().Settled.Posture), PostureText.Write(Once().Settled.Posture));
        Assert.Equal(Once().Shift, Once().Shift);
    }

    [Fact]
    public void Follow_AKneeBehindAPartnersGrip_KeepsHandsTogether()
    {
        var start = PostureLibrary.Find("pair-lean-out")!.Settle();
        var knee = start.Body.Skeleton.Frame(SegmentKind.Shank, Side.Left).Origin;
        var move = PostureEdit.Of(start).Follow([new PoseGoal.Seen(SegmentKind.Shank, Side.Left, new(0, 0, 0), knee + new Point3(.03, 0, 0), FromTheSide)], []);
        Assert.True(move.Settled.IsTouching);
        Assert.InRange(move.Settled.JoinGapH, 0, SettledPosture.JoinedH);
    }

    [Fact]
    public void Follow_BelowTheFloor_StaysAboveIt()
    {
        var start = PostureLibrary.Find("two-feet")!.Settle();
        var move = PostureEdit.Of(start).Follow([new PoseGoal.Seen(SegmentKind.Hand, Side.Left, new(0, 0, 0), new(.3, .2, -.5), FromTheSide)], []);
        Assert.InRange(move.Settled.Body.Skeleton.Frame(SegmentKind.Hand, Side.Left).Origin.ZH, .0, .2);
        Assert.False(move.IsMet);
    }

    [Fact]
    public void Of_TheSecondBodyOfOne_SaysThatThereIsNone() =>
        Assert.Throws<ArgumentException>(() => PostureEdit.Of(PostureLibrary.Find("two-feet")!.Settle(), isPartner: true));
}
