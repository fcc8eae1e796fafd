using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using static Slantwise.Surface.Tests.Desk.Balance.StudioPostures;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed class StudioSessionTests
{
    private static readonly Point3 FromTheSide = new(0, 1, 0);

    [Fact]
    public void Drag_AHandForward_MovesTheCentreAndIsOneStepToUndo()
    {
        var session = new StudioSession(Standing);
        var before = session.Balance.Whole.Centre;
        Assert.NotNull(session.Begin("0-hand-left"));
        for (var i = 1; i <= 10; i++) session.Drag(new(.02 * i, 0, .03 * i), FromTheSide);
        Assert.True(session.IsDragging);
        session.End();
        // By hand: an arm of about a twentieth of the body, moved by less than half a stature, moves the centre by up to .02 H.
        Assert.InRange(session.Balance.Whole.Centre.XH + session.Offset.XH - before.XH, .001, .02);
        Assert.True(session.IsChanged);
        session.Undo();
        Assert.Equal(Standing, session.Posture);
        Assert.False(session.CanUndo);
        session.Redo();
        Assert.NotEqual(Standing, session.Posture);
    }

    [Fact]
    public void Drag_AFootSideways_MovesItsPrintOnTheFloorAndNotTheOther()
    {
        var session = new StudioSession(Standing);
        var (left, right) = (session.Settled.Body.Contacts[0].Middle, session.Settled.Body.Contacts[1].Middle);
        session.Begin("0-on-foot-left");
        session.Drag(new(.02, .10, .4), FromTheSide);
        session.End();
        var (leftNow, rightNow) = (session.Settled.Body.Contacts[0].Middle + session.Offset, session.Settled.Body.Contacts[1].Middle + session.Offset);
        Assert.InRange((leftNow - left - new Point2(.02, .10)).LengthH, 0, .006);
        Assert.InRange((rightNow - right).LengthH, 0, .002);
    }

    [Fact]
    public void Drag_AHandOutOfReach_SaysWhatStopsIt()
    {
        var session = new StudioSession(Standing);
        session.Begin("0-hand-left");
        session.Drag(new(2, 0, 0), FromTheSide);
        Assert.True(session.IsStopped);
        Assert.Contains(session.Stops, s => s is { Joint: Joint.ElbowFlexion, Side: Side.Left, Kind: JointStopKind.Straight });
    }

    [Fact]
    public void HeadTowardsLine_PressedAgain_TurnsTheTriangleIntoALine()
    {
        var session = new StudioSession(Tripod);
        Assert.True(session.HasHeadAndHands);
        var narrowness = new List<double> { session.Balance.Whole.Base.NarrownessFraction };
        for (var i = 0; i < 3; i++)
        {
            session.HeadTowardsLine();
            narrowness.Add(session.Balance.Whole.Base.NarrownessFraction);
        }
        Assert.Equal(narrowness.OrderDescending(), narrowness);
        Assert.True(narrowness[^1] < .8 * narrowness[0], string.Join(' ', narrowness));
        // By hand: three times a third of the way leaves .66 · .66 · .66 = .29 of the height.
        Assert.InRange(BalanceWords.TriangleFraction(session.Settled)!.Value / BalanceWords.TriangleFraction(Tripod.Settle())!.Value, .25, .40);
    }

    [Fact]
    public void SpreadHands_WiderAndCloser_MovesBothByTheSameStep()
    {
        var session = new StudioSession(Tripod);
        double ApartH() => (session.Settled.Body.Contacts[0].Middle - session.Settled.Body.Contacts[1].Middle).LengthH;
        var startH = ApartH();
        session.SpreadHands(isWider: true);
        Assert.Equal(startH + .06, ApartH(), .006);
        session.SpreadHands(isWider: false);
        Assert.Equal(startH, ApartH(), .012);
    }

    [Fact]
    public void SetAngle_AKneeWhileBothFeetStand_BendsItToTheDegree()
    {
        var session = new StudioSession(Standing);
        session.SetAngle(false, Joint.KneeFlexion, Side.Left, 40);
        Assert.Equal(40, session.Posture.Pose.AngleRad(Joint.KneeFlexion, Side.Left) * 180 / Math.PI, .5);
        Assert.True(session.Settled.IsTouching);
        session.SetAngle(false, Joint.ShoulderFlexion, Side.Right, 500);
        Assert.Equal(190, session.Posture.Pose.AngleRad(Joint.ShoulderFlexion, Side.Right) * 180 / Math.PI, .5);
    }

    [Fact]
    public void Lift_AFoot_LeavesTheOtherAndCannotLiftTheLast()
    {
        var session = new StudioSession(Standing);
        session.Lift(LeftFoot);
        Assert.Equal([RightFoot], session.Posture.Contacts);
        Assert.False(session.Balance.IsHeld);
        session.Lift(RightFoot);
        Assert.Equal([RightFoot], session.Posture.Contacts);
        session.PutDown(LeftFoot);
        Assert.Equal([RightFoot, LeftFoot], session.Posture.Contacts);
        // No sole lies flat while the knee above it is on the floor: it stays up, and the page says so.
        var knee = new Contact(ContactPart.Knee, Side.Right);
        session.PutDown(knee);
        Assert.DoesNotContain(knee, session.Posture.Contacts);
        Assert.True(session.IsStopped);
    }

    [Fact]
    public void Mirror_Twice_IsThePostureAgain()
    {
        var session = new StudioSession(Standing with { Pose = Standing.Pose.With(Joint.ElbowFlexion, Side.Left, 1.2).With(Joint.SpineLean, Side.Middle, .1) });
        var (elbowRad, marginH) = (session.Posture.Pose.AngleRad(Joint.ElbowFlexion, Side.Left), session.Balance.Whole.Margin.MarginH);
        session.Mirror();
        Assert.Equal(elbowRad, session.Posture.Pose.AngleRad(Joint.ElbowFlexion, Side.Right));
        Assert.Equal(marginH, session.Balance.Whole.Margin.MarginH, 1e-9);
        session.Mirror();
        Assert.Equal(elbowRad, session.Posture.Pose.AngleRad(Joint.ElbowFlexion, Side.Left));
    }

    [Fact]
    public void Reset_AfterChanges_GoesBackAndCanItselfBeUndone()
    {
        var session = new StudioSession(Standing);
        session.SetAngle(false, Joint.ElbowFlexion, Side.Left, 90);
        var changed = session.Posture;
        session.Reset();
        Assert.Equal(Standing, session.Posture);
        session.Undo();
        Assert.Equal(changed, session.Posture);
    }

    [Fact]
    public void Begin_AnUnknownHandle_DragsNothing()
    {
        var session = new StudioSession(Standing);
        Assert.Null(session.Begin("9-nothing"));
        session.Drag(new(1, 0, 0), FromTheSide);
        Assert.False(session.IsChanged);
        Assert.Equal(Standing, session.Posture);
    }

    [Fact]
    public void Drag_ManyHandlesAtRandom_AlwaysTouchesAndWritesAFileThatReadsBack()
    {
        var random = new Random(7);
        var session = new StudioSession(Tripod);
        for (var i = 0; i < 80; i++)
        {
            var handles = session.Handles;
            session.Begin(handles[random.Next(handles.Count)].Id);
            session.Drag(new(.3 * random.NextDouble() - .15, .3 * random.NextDouble() - .15, .3 * random.NextDouble() - .15), FromTheSide);
            session.End();
            Assert.True(session.Settled.IsTouching, $"seed 7, drag {i}");
        }
        var again = PostureText.Read(PostureText.Write(session.Posture));
        Assert.Empty(again.Problems);
        Assert.Equal(session.Balance.Whole.Margin.MarginH, PostureBalance.Of(again.Posture!.Settle()).Whole.Margin.MarginH, .005);
    }
}
