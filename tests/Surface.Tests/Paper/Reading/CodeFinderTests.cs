using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Reading;

namespace Slantwise.Surface.Tests.Paper.Reading;

public sealed class CodeFinderTests
{
    private const string Text = "NCFOXN%TSMAHN-HA7WX%I4.WO1G12345678";

    // 5 pixels a millimetre, a code of 20 mm in the middle of A5 on a dark table.
    private static GreyImage Photo(float turnDeg, Action<SKCanvas>? more = null, byte paper = 225, byte blackening = 0)
    {
        using var bitmap = new SKBitmap(1000, 1300, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new SKColor(70, 60, 50));
        canvas.Translate(500, 650);
        canvas.RotateDegrees(turnDeg);
        using var white = new SKPaint { Color = new SKColor(paper, paper, paper) };
        canvas.DrawRect(-350, -500, 700, 1000, white);
        DrawnForm.DrawCode(canvas, Text, -50, -50, 100);
        more?.Invoke(canvas);
        canvas.Flush();
        var grey = GreyPixels.Of(bitmap.GetPixelSpan(), 1000, 1300, SKEncodedOrigin.TopLeft);
        if (blackening > 0) for (var i = 0; i < grey.Values.Length; i++) grey.Values[i] = (byte)(grey.Values[i] * (255 - blackening) / 255);
        return grey;
    }

    private static IReadOnlyList<SeenCode> Find(GreyImage image) => CodeFinder.Find(image, () => false);

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(133)]
    [InlineData(180)]
    [InlineData(263)]
    public void Find_TurnedCode_IsReadWithItsPatternsInPlace(int turnDeg)
    {
        var seen = Assert.Single(Find(Photo(turnDeg)));
        Assert.Equal(Text, seen.Text);
        // By hand: 25 modules of 4 pixels; a pattern's middle lies 3.5 modules in, which is 36 pixels from the code's middle either way.
        Assert.Equal(18 / 25.0, seen.Sighting.FinderFraction, 9);
        var (sin, cos) = Math.SinCos(turnDeg * Math.PI / 180);
        foreach (var (place, x, y) in new[] { (seen.Sighting.TopLeft, -36, -36), (seen.Sighting.TopRight, 36, -36), (seen.Sighting.BottomLeft, -36, 36) })
        {
            Assert.InRange(place.XPx - (500 + x * cos - y * sin), -1.5, 1.5);
            Assert.InRange(place.YPx - (650 + x * sin + y * cos), -1.5, 1.5);
        }
    }

    [Fact]
    public void Find_DarkPhoto_IsRead() => Assert.Equal(Text, Assert.Single(Find(Photo(3, blackening: 200))).Text);

    [Fact]
    public void Find_TwoCodes_AreBothRead()
    {
        var seen = Find(Photo(5, canvas => DrawnForm.DrawCode(canvas, "ANOTHER ONE", 150, 300, 90)));
        Assert.Equal(["ANOTHER ONE", Text], seen.Select(c => c.Text).Order());
    }

    [Fact]
    public void Find_BlottedCode_IsSeenAndNotRead()
    {
        var seen = Find(Photo(0, canvas => canvas.DrawCircle(5, 5, 24, new SKPaint { Color = SKColors.Black })));
        Assert.Null(Assert.Single(seen).Text);
        Assert.InRange(seen[0].Sighting.TopLeft.XPx, 462.5, 465.5);
    }

    [Fact]
    public void Find_NoCode_IsEmpty()
    {
        using var page = DrawnForm.Draw(DrawnForm.Layout(), null, []);
        Assert.DoesNotContain(Find(GreyPixels.Of(page.GetPixelSpan(), page.Width, page.Height, SKEncodedOrigin.TopLeft)), c => c.Text is not null);
    }

    [Fact]
    public void Find_TimeIsUp_StopsWithoutAnAnswer() => Assert.Empty(CodeFinder.Find(Photo(0), () => true));
}
