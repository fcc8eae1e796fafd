using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed class PhotoViewTests
{
    [Fact]
    public void Current_ArmsAndLegsTogether_ElevenMarksAndNothingElse()
    {
        var view = Shown();
        var asked = new List<string>();
        while (view.Current is { } step)
        {
            asked.Add(step.Key);
            view.Place(new(10 * asked.Count, 20));
        }
        Assert.Equal(
            ["Crown-Middle", "Jaw-Middle", "Shoulder-Middle", "Elbow-Middle", "Wrist-Middle", "Fingertip-Middle", "Hip-Middle", "Knee-Middle", "Ankle-Middle", "Heel-Middle", "Toe-Middle"],
            asked);
        Assert.Empty(view.ToPicture().Needs());
    }

    [Fact]
    public void Current_Skipped_GoesOnAndCanBeAskedForAgain()
    {
        var view = Shown();
        view.Skip();
        Assert.Equal("Jaw-Middle", view.Current?.Key);
        view.Ask(PhotoStep.Of(Landmark.Crown, Side.Middle));
        view.Place(new(5, 6));
        Assert.Equal("Jaw-Middle", view.Current?.Key);
        Assert.False(view.IsSkipped(PhotoStep.Of(Landmark.Crown, Side.Middle)));
        Assert.Equal(new PointPx(5, 6), Assert.Single(view.Marks).At);
    }

    [Fact]
    public void Skip_ShoulderOrHip_IsNotTaken()
    {
        var view = Shown();
        view.Ask(PhotoStep.Of(Landmark.Hip, Side.Middle));
        view.Skip();
        Assert.Equal("Hip-Middle", view.Current?.Key);
    }

    [Fact]
    public void SetTouching_PartWithoutPointsOfItsOwn_AsksForBothEnds()
    {
        var view = Shown();
        view.SetTouching(new(ContactPart.Foot, Side.Middle), false);
        view.SetTouching(new(ContactPart.Seat, Side.Middle), true);
        Assert.Equal(["Seat-Middle-0", "Seat-Middle-1"], view.Steps.TakeLast(2).Select(s => s.Key));
        foreach (var step in view.Steps.ToArray())
        {
            view.Ask(step);
            view.Place(new(step.End + 1, 2));
        }
        Assert.Equal([new PointPx(1, 2), new PointPx(2, 2)], Assert.Single(view.ToPicture().Contacts).Ends.Select(e => e.At));
    }

    [Fact]
    public void SetLegsApart_AlreadyMarked_KeepsTheMarksForTheNearerLeg()
    {
        var view = Filled();
        var kneePx = view.Marks.Single(m => m.Step.Landmark == Landmark.Knee).At;
        view.SetLegsApart(true);
        Assert.Equal("Knee-Right", view.Current?.Key);
        Assert.Equal(kneePx, view.Marks.Single(m => m.Step == PhotoStep.Of(Landmark.Knee, Side.Left)).At);
        Assert.Equal([new PhotoTouch(ContactPart.Foot, Side.Left), new PhotoTouch(ContactPart.Foot, Side.Right)], view.Touching);
        view.Undo();
        Assert.False(view.AreLegsApart);
        Assert.Equal(kneePx, view.Marks.Single(m => m.Step == PhotoStep.Of(Landmark.Knee, Side.Middle)).At);
        Assert.Null(view.Current);
    }

    [Fact]
    public void SetLegsApart_PutTogetherAgain_NearerLegStandsForBoth()
    {
        var view = Filled();
        view.SetLegsApart(true);
        while (view.Current is not null) view.Place(new(77, 77));
        view.SetLegsApart(false);
        Assert.Null(view.Current);
        Assert.DoesNotContain(view.Marks, m => m.At == new PointPx(77, 77));
        Assert.Equal([new PhotoTouch(ContactPart.Foot, Side.Middle)], view.Touching);
    }

    [Fact]
    public void Move_InSeveralSteps_IsUndoneAsOne()
    {
        var view = Filled();
        var crown = PhotoStep.Of(Landmark.Crown, Side.Middle);
        var before = view.Marks[0].At;
        view.Move(crown, new(30, 30), isNew: true);
        view.Move(crown, new(40, 40), isNew: false);
        Assert.Equal(new PointPx(40, 40), view.Marks[0].At);
        view.Undo();
        Assert.Equal(before, view.Marks[0].At);
    }

    [Fact]
    public void Place_OutsideThePicture_IsBroughtToItsEdge()
    {
        var view = Shown();
        view.Place(new(-5, 5000));
        Assert.Equal(new PointPx(0, 400), view.Marks[0].At);
    }

    [Fact]
    public void Repeat_EverythingMarkedTwice_AveragesAndMeasuresTheError()
    {
        var session = new PhotoSession();
        var view = session.Active;
        view.Show(900, 1200);
        PhotoSample.Describe("Handstand", view);
        void MarkAll(double aside)
        {
            for (var i = 0; view.Current is { } step; i++)
            {
                var (left, top) = PhotoSampleMarks.Of("Handstand", false, step);
                // By turns to the right and to the left, so that both rounds differ by twice that.
                view.Place(new(900 * left + (i % 2 == 0 ? aside : -aside), 1200 * top));
            }
        }
        MarkAll(3);
        Assert.Null(session.MeasuredClickH(view));
        view.Repeat();
        Assert.NotNull(view.Current);
        MarkAll(-3);
        // By hand: eleven points, each twice, 3 points off their mean the one way and the other, in one of two directions:
        // 11 · 2 · 9 over 22 degrees of freedom is 9, so 3 points.
        var marked = session.BalanceOf(view)!;
        Assert.Equal(3 / marked.Scale.PxPerH, session.MeasuredClickH(view)!.Value, 1e-9);
        Assert.Equal(session.MeasuredClickH(view), marked.ClickSdH);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Of_ShownPoint_IsThePointThatWasShownThere(int quarters)
    {
        var turn = new PhotoTurn(300, 400, quarters);
        var at = new PointPx(30, 50);
        Assert.Equal(at, turn.Of(turn.Shown(at)));
        Assert.Equal(quarters % 2 == 0 ? 300 : 400, turn.ShownWidthPx);
        // By hand: turned clockwise, the top left corner comes to the top right.
        if (quarters == 1) Assert.Equal(new PointPx(400, 0), turn.Shown(new(0, 0)));
    }

    private static PhotoView Shown()
    {
        var view = new PhotoView(isFront: false);
        view.Show(300, 400);
        return view;
    }

    private static PhotoView Filled()
    {
        var view = Shown();
        for (var i = 0; view.Current is not null; i++) view.Place(new(10 + i, 10 + 30 * i));
        return view;
    }
}
