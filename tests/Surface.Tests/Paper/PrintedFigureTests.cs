using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Surface.Tests.Paper;

public sealed class PrintedFigureTests
{
    private const string Standing = """{ "key": "standing", "group": "upright", "joints": { "shoulderAbduction": 60, "hipAbduction": 15 }, "touches": ["foot.left", "foot.right"] }""";

    private const string Handstand = """
        { "key": "handstand", "group": "inverted", "bow": 180, "joints": { "shoulderFlexion": 178, "forearmPronation": 90, "wristExtension": 90 }, "touches": ["hand.left", "hand.right"] }
        """;

    // At 25 mm and 300 dots an inch, in grey: each part of the figure is a patch of its own grey, inside a line. Limits by hand.
    [Theory]
    [InlineData(Standing, FigureView.Front)]
    [InlineData(Handstand, FigureView.Side)]
    public void Of_Figure25MmHigh_PartsAreToldApartInGrey(string json, FigureView view)
    {
        var settled = PostureText.Read(json).Posture!.Settle();
        var figure = PostureFigure.Of(settled, new FigureOptions(view, 25, 25), "");
        using var file = new PrintedFile([figure.Scene]);
        Tool.Run("pdftoppm", "-r", "300", "-gray", "-singlefile", file.Name, file.Beside("page"));
        var image = GreyPage.Read(file.Beside("page.pgm"), 300);

        int Grey(SegmentKind kind, Side side, Point3 own)
        {
            var (xMm, yMm, _) = figure.Frame.At(settled.Body.Skeleton.Frame(kind, side).At(own));
            return image.GreyAt(xMm, yMm);
        }
        var skin = Grey(SegmentKind.Shank, Side.Right, new(0, 0, -.1));
        var shirt = Grey(SegmentKind.MiddleTrunk, Side.Middle, new(0, 0, .05));
        var shorts = Grey(SegmentKind.Thigh, Side.Right, new(0, 0, -.07));
        var hair = Grey(SegmentKind.Head, Side.Middle, new(-.02, 0, BodyLengths.NeckH + BodyLengths.HeadH - .012));
        Assert.True(skin > 245 && shirt is > 160 and < 225 && shorts is > 50 and < 110 && hair < 50, $"skin {skin}, shirt {shirt}, shorts {shorts}, hair {hair}");

        var (shinXMm, shinYMm, _) = figure.Frame.At(settled.Body.Skeleton.Frame(SegmentKind.Shank, Side.Right).At(new(0, 0, -.1)));
        Assert.All([-1, 1], way => Assert.True(Enumerable.Range(2, 20).Min(i => image.GreyAt(shinXMm + way * i * .08, shinYMm)) < 90));
    }
}
