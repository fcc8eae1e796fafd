using Slantwise.Engines.Drawing;

namespace Slantwise.Engines.Tests.Drawing;

public sealed class ShapeMoveTests
{
    // One of each kind, and where each should be 3 to the right and 2 down.
    public static TheoryData<Shape, Shape> Moves => new()
    {
        { new Line(1, 2, 3, 4, .5, Tone.Ink), new Line(4, 4, 6, 6, .5, Tone.Ink) },
        { new Box(1, 2, 3, 4, Tone.Faint, .2, 1), new Box(4, 4, 3, 4, Tone.Faint, .2, 1) },
        { new Disc(1, 2, 3, Tone.Accent), new Disc(4, 4, 3, Tone.Accent) },
        { new Text(1, 2, "a", 9, Tone.Ink), new Text(4, 4, "a", 9, Tone.Ink) },
    };

    [Theory]
    [MemberData(nameof(Moves))]
    public void By_EachKind_MovesItsPlaceAndKeepsItsSize(Shape shape, Shape moved) => Assert.Equal(moved, ShapeMove.By(shape, 3, 2));

    [Fact]
    public void By_AnOutline_MovesEveryPointAndControl()
    {
        var moved = (Outline)ShapeMove.By(new Pen().MoveTo(0, 0).CurveTo(1, 2, 3, 4, 5, 6).LineTo(7, 8).Close().Fill(Tone.Ink), 3, 2);
        Assert.Equal(new Pen().MoveTo(3, 2).CurveTo(4, 4, 6, 6, 8, 8).LineTo(10, 10).Close().Fill(Tone.Ink).Steps, moved.Steps);
    }
}
