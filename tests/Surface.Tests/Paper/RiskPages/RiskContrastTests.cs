using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Safety;
using static Slantwise.Surface.Tests.Paper.RiskPages.RiskPaper;

namespace Slantwise.Surface.Tests.Paper.RiskPages;

public sealed class RiskContrastTests
{
    private const int Dpi = 200;

    [Theory]
    [InlineData("#000000", "#ffffff", 21.0)]
    [InlineData("#ffffff", "#000000", 21.0)]
    [InlineData("#123456", "#123456", 1.0)]
    [InlineData("#777777", "#ffffff", 4.48)]
    [InlineData("#767676", "#ffffff", 4.54)]
    [InlineData("#ff0000", "#ffffff", 4.00)]
    // By hand from the definition: (1 + .05) / (((128/255 + .055) / 1.055)^2.4 + .05) = 1.05 / .26586.
    [InlineData("#808080", "#ffffff", 3.95)]
    public void Ratio_KnownPairs_IsAsPublished(string one, string other, double expected) => Assert.Equal(expected, Contrast.Ratio(one, other), 0.005);

    [Theory]
    [InlineData("en", false, false)]
    [InlineData("en", true, false)]
    [InlineData("en", false, true)]
    [InlineData("en", true, true)]
    [InlineData("es", false, false)]
    [InlineData("es", true, false)]
    [InlineData("es", false, true)]
    [InlineData("es", true, true)]
    public void Of_RiskPages_EveryTextAndLineIsDarkEnough(string language, bool isCream, bool isGrey)
    {
        var (longest, material, _) = Longest();
        var options = Options(language) with { IsCream = isCream };
        var pages = Print(Record(), Material(Record()), options).Concat(Print(longest, material, options)).ToList();
        // All three fills are there to stand on, and lines to sign on.
        Assert.Superset(new HashSet<Tone> { Tone.Ink, Tone.AccentSoft, isCream ? Tone.Cream : Tone.Ground }, pages.SelectMany(p => p.Shapes).OfType<Box>().Where(b => b.StrokeMm == 0).Select(b => b.Tone).ToHashSet());
        Assert.Contains(pages.SelectMany(p => p.Shapes), s => s is Line);
        Assert.Empty(pages.SelectMany(p => PaleInk.Of(p, isGrey)));
    }

    public static TheoryData<string, Shape[]> Pale => new()
    {
        { "pale words on paper", [new Text(20, 20, "pale", 12, Tone.AccentMiddle)] },
        { "words in the colour of their ground", [new Box(10, 10, 60, 20, Tone.Ink), new Text(20, 20, "lost", 12, Tone.Ink)] },
        { "words that reach over a dark fill's end", [new Box(10, 10, 14, 20, Tone.Ink), new Text(20, 20, "half of this is lost", 12, Tone.Ink)] },
        { "a pale line to sign on", [new Line(10, 40, 90, 40, 0.3, Tone.SecondMiddle)] },
        { "a guide line on cream", [new Box(0, 0, 100, 100, Tone.Cream), new Line(10, 40, 90, 40, 0.3, Tone.Faint)] },
        { "a pale box to tick", [new Box(10, 40, 3, 3, Tone.AccentSoft, 0.3)] },
        { "words under a later fill", [new Text(20, 20, "under", 12, Tone.Ink), new Box(10, 10, 60, 20, Tone.Ground)] },
    };

    [Theory]
    [MemberData(nameof(Pale))]
    public void Of_PaleShapes_AreFound(string what, Shape[] shapes)
    {
        Assert.NotEmpty(what);
        Assert.NotEmpty(PaleInk.Of(new Scene(100, 100, shapes, "")));
    }

    [Fact]
    public void Of_ShapeItDoesNotKnow_IsRefused() =>
        Assert.Throws<NotSupportedException>(() => PaleInk.Of(new Scene(100, 100, [new Disc(10, 10, 5, Tone.Ink)], "")));

    [Fact]
    public void Of_PdfInGrey_EveryTextIsDarkEnoughOnThePixelsAroundIt()
    {
        var page = Print(Record(), Material(Record()), Options("es"))[0];
        using var file = new PrintedFile([page], Options("es").Language);
        Tool.Run("pdftoppm", "-gray", "-r", $"{Dpi}", "-singlefile", file.Name, file.Beside("page"));
        var grey = GreyPage.Read(file.Beside("page.pgm"), Dpi);
        var measured = 0;
        foreach (var text in page.Shapes.OfType<Text>())
        {
            var (left, top, right, bottom) = text.InkRoom();
            var values = new List<int>();
            for (var y = top; y < bottom; y += 0.12)
                for (var x = left; x < right; x += 0.12) values.Add(grey.GreyAt(x, y));
            // The ground is what there is most of; the ink is what is furthest from it, thin strokes being never quite as dark as drawn.
            var ground = values.CountBy(v => v).MaxBy(v => v.Value).Key;
            var ink = values.MaxBy(v => Math.Abs(v - ground));
            var ratio = Contrast.Ratio($"#{ground:x2}{ground:x2}{ground:x2}", $"#{ink:x2}{ink:x2}{ink:x2}");
            Assert.True(ratio >= Contrast.TextRatio, $"'{text.Content}': {ink} on {ground} is {ratio:0.00}.");
            measured++;
        }
        Assert.True(measured > 40);
    }
}
