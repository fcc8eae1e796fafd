using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class TwoViewBalanceTests
{
    [Theory]
    [InlineData("stork")]
    [InlineData("tuck headstand")]
    [InlineData("support")]
    public void Of_OwnBodyFromSideAndFront_GivesItsMarginBack(string name)
    {
        var body = Held.Of(name);
        var whole = BodyBalance.Of(body);
        var views = TwoViewBalance.Of(
            MarkedBalance.Of(Drawn.Picture(body, Drawn.FromSide)), MarkedBalance.Of(Drawn.Picture(body, Drawn.FromFront)), isFromRight: true);
        // Rounded prints fill their rectangles less; seen from the front, a crouched body has its scale from fewer limbs.
        Assert.Equal(whole.Margin.MarginH, views.MarginH, .02);
        Assert.Equal(body.Contacts.Count, views.Boxes.Count);
        // From the front a body in support points towards the camera: its own scale is far off, and it says so.
        Assert.Equal(name != "support", views.IsSameHeight);
        if (whole.Loads.Basis != LoadBasis.Statics) return;
        Assert.Equal(whole.Loads.Shares.Select(s => s.ShareFraction), views.Loads!.Shares.Select(s => s.ShareFraction), (a, b) => Math.Abs(a - b) < .03);
    }

    [Fact]
    public void Of_OneMarkForBothSides_MatchesEachSide()
    {
        var body = Held.Of("support");
        var side = MarkedBalance.Of(MarkedBalanceTests.Both(Drawn.Picture(body, Drawn.FromSide)));
        var views = TwoViewBalance.Of(side, MarkedBalance.Of(Drawn.Picture(body, Drawn.FromFront)), isFromRight: true);
        Assert.Equal(4, views.Boxes.Count);
        Assert.DoesNotContain(Side.Middle, views.Boxes.Select(b => b.Side));
    }

    [Fact]
    public void Of_SecondCameraOnTheOtherSide_MirroredAndTheSameMargin()
    {
        // Both pictures taken from the opposite side show everything left for right.
        var body = Held.Of("tuck headstand");
        var front = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromFront));
        var back = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromFront).Mapped(p => new(1400 - p.XPx, p.YPx)));
        var side = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromSide));
        var (here, there) = (TwoViewBalance.Of(side, front, isFromRight: true), TwoViewBalance.Of(side, back, isFromRight: false));
        Assert.Equal(here.MarginH, there.MarginH, 1e-9);
        Assert.Equal(here.HeldChanceFraction, there.HeldChanceFraction, 1e-9);
        Assert.Equal(here.Boxes[0].Near.YH, there.Boxes[0].Near.YH, 1e-9);
    }

    [Fact]
    public void Of_ContactInOnePictureOnly_TwoIntervals()
    {
        var body = Held.Of("tuck headstand");
        var side = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromSide));
        var front = Drawn.Picture(body, Drawn.FromFront);
        var views = TwoViewBalance.Of(side, MarkedBalance.Of(front with { Contacts = [.. front.Contacts.Skip(1)] }), isFromRight: true);
        Assert.Null(views.Base);
        Assert.Equal(Math.Min(side.MarginH, views.MarginH), views.MarginH);
    }

    [Fact]
    public void Of_TwoMoments_HeightsDiffer()
    {
        var side = MarkedBalance.Of(Drawn.Picture(Held.Of("squat"), Drawn.FromSide));
        Assert.False(TwoViewBalance.Of(side, MarkedBalance.Of(Drawn.Picture(Held.Of("standing"), Drawn.FromFront)), isFromRight: true).IsSameHeight);
    }
}
