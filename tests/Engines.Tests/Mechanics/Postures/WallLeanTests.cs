using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Engines.Tests.Mechanics.Postures;

public sealed class WallLeanTests
{
    private static readonly Contact[] Feet = [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)];
    private static readonly Contact[] Hands = [new(ContactPart.Hand, Side.Left), new(ContactPart.Hand, Side.Right)];

    [Fact]
    public void Of_LeaningForwardsOnTheHands_PushTimesHeightIsWeightTimesOverhang()
    {
        var settled = Leaning(20).Settle();
        var balance = PostureBalance.Of(settled);
        Assert.Equal(1, balance.Wall!.Towards.XH, 1e-9);
        Assert.True(balance.IsHeld);
        // By hand, moments about the toes.
        var toesH = settled.Body.Contacts.SelectMany(c => c.Outline).Max(p => p.XH);
        Assert.Equal(balance.Whole.Centre.XH - toesH, balance.Wall.PushFraction * balance.Wall.HeightH, 1e-9);
        Assert.False(BodyBalance.Of(settled.Body).Margin.IsHeld);
        // The wall's push is level: the feet carry the whole weight, half each.
        Assert.Equal([.5, .5], balance.Whole.Loads.Shares.Select(s => s.ShareFraction), (a, b) => Math.Abs(a - b) < 1e-6);
    }

    [Fact]
    public void Of_StandingUprightAtTheWall_NoPushNeeded() => Assert.Equal(0, PostureBalance.Of(Leaning(0).Settle()).Wall!.PushFraction);

    [Fact]
    public void Of_LeaningBackAwayFromTheWall_NothingHolds()
    {
        // A wall in front cannot pull.
        var balance = PostureBalance.Of(Leaning(-20).Settle());
        Assert.False(balance.IsHeld);
        Assert.True(double.IsNaN(balance.Wall!.PushFraction));
    }

    [Fact]
    public void Margin_WithAWall_IsNeverOverTheSideThatFacesIt()
    {
        var margin = PostureBalance.Of(Leaning(20).Settle()).Whole.Margin;
        Assert.Contains(margin.Edges, e => e.IsPropped);
        Assert.All(margin.Edges.Where(e => e.IsPropped), e => Assert.True(e.From.XH > 1 && e.To.XH > 1));
        Assert.False(margin.Edges[margin.WeakestEdge].IsPropped);
    }

    private static Posture Leaning(double forwardDeg)
    {
        var forwardRad = forwardDeg * Math.PI / 180;
        var pose = Pose.Upright.Placed(forwardRad, 0, 0).With(Joint.AnkleFlexion, Side.Middle, forwardRad).With(Joint.ShoulderFlexion, Side.Middle, Math.PI / 2 + forwardRad);
        return new Posture("at-the-wall", PostureGroup.Upright, pose, Feet) { Wall = Hands };
    }
}
