using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed class PhotoSessionTests
{
    [Theory]
    [InlineData("OneFoot")]
    [InlineData("Handstand")]
    public void BalanceOf_DrawnSample_GivesTheCentreOfTheBodyItWasDrawnFrom(string key)
    {
        var marked = new PhotoSession().BalanceOf(PhotoSampleMarks.Marked(key))!;
        var figure = PhotoSample.Of(key, isFront: false);
        var whole = BodyBalance.Of(PhotoSample.Posture(key).Body);
        var (xMm, yMm, _) = figure.Frame.At(whole.Centre);
        var there = new PointPx(900 * xMm / figure.Scene.WidthMm, 1200 * yMm / figure.Scene.HeightMm);
        Assert.True((marked.CentrePx - there).LengthPx < .01 * marked.Scale.PxPerH, $"{(marked.CentrePx - there).LengthPx / marked.Scale.PxPerH}");
        Assert.Empty(marked.Cautions);
    }

    [Fact]
    public void BalanceOf_PictureUpsideDownInTheFile_SameAnswerOnceTurned()
    {
        var session = new PhotoSession();
        var upright = PhotoSampleMarks.Marked("Handstand");
        var turned = new PhotoView(isFront: false);
        turned.Show(900, 1200);
        PhotoSample.Describe("Handstand", turned);
        turned.TurnQuarter();
        turned.TurnQuarter();
        foreach (var (_, at) in upright.Marks) turned.Place(new PointPx(900, 1200) - at);
        Assert.Equal(session.BalanceOf(upright)!.MarginH, session.BalanceOf(turned)!.MarginH, 1e-9);
    }

    [Fact]
    public void BalanceOf_MarkedUpsideDown_GravityStays()
    {
        var session = new PhotoSession();
        var view = PhotoSampleMarks.Marked("Handstand");
        var before = session.BalanceOf(view)!;
        view.Flip();
        Assert.Equal(before.HeightH, session.BalanceOf(view)!.HeightH);
        Assert.Equal(2, view.Turn.QuarterCount);
    }

    [Fact]
    public void BalanceOf_SomethingMissing_None()
    {
        var view = new PhotoView(isFront: false);
        view.Show(300, 400);
        Assert.Null(new PhotoSession().BalanceOf(view));
        // Everything in one place has no length.
        while (view.Current is not null) view.Place(new(50, 50));
        Assert.Null(new PhotoSession().BalanceOf(view));
    }

    [Fact]
    public void BalanceOf_SomethingUprightMarkedFromBelow_SameAsFromAbove()
    {
        double Margin(params PointPx[] ends)
        {
            var view = PhotoSampleMarks.Marked("OneFoot");
            view.SetLevel(LevelBasis.Upright);
            foreach (var end in ends) view.Place(end);
            return new PhotoSession().BalanceOf(view)!.MarginH;
        }
        Assert.Equal(Margin(new(100, 100), new(110, 1100)), Margin(new(110, 1100), new(100, 100)), 1e-12);
        Assert.NotEqual(Margin(new(100, 100), new(110, 1100)), Margin(new(100, 100), new(100, 1100)), 1e-3);
    }

    [Fact]
    public void Both_DrawnFromSideAndFront_GivesTheMarginOfTheBody()
    {
        var session = new PhotoSession();
        Fill(session.Active, "OneFoot", isFront: false);
        Assert.Null(session.Both());
        session.AddSecond();
        Assert.Equal(1, session.ActiveNumber);
        Fill(session.Active, "OneFoot", isFront: true);
        var both = session.Both()!;
        Assert.Equal(BodyBalance.Of(PhotoSample.Posture("OneFoot").Body).Margin.MarginH, both.MarginH, .012);
        Assert.Equal(ContactPart.Foot, Assert.Single(both.Boxes).Part);
        session.RemoveSecond();
        Assert.Null(session.Both());
    }

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(0, .1)]
    [InlineData(99, 10)]
    [InlineData(2.5, 2.5)]
    public void SetClick_AnyNumber_StaysWithinWhatTheEngineTakes(double typed, double taken)
    {
        var session = new PhotoSession();
        session.SetClick(typed);
        Assert.Equal(taken, session.ClickHundredthsCount);
    }

    private static void Fill(PhotoView view, string key, bool isFront)
    {
        view.Show(900, 1200);
        PhotoSample.Describe(key, view);
        while (view.Current is { } step)
        {
            var (left, top) = PhotoSampleMarks.Of(key, isFront, step);
            view.Place(new(900 * left, 1200 * top));
        }
    }
}
