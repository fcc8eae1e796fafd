using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Posters;
using Slantwise.Surface.Tests.Paper.Cards;

namespace Slantwise.Surface.Tests.Paper.Posters;

public sealed class JoinPosterTests
{
    private static readonly JoinInvitation Invitation = new(
        "7 Heron", "K7M4QX", "http://192.0.2.17:5080/floor/#join=K7M4QX", "192.0.2.17:5080/floor", new DateTimeOffset(2026, 11, 26, 10, 45, 0, TimeSpan.FromHours(1)));

    [Theory]
    [InlineData(PaperSize.A4, "en", 210, 297, "10:45")]
    [InlineData(PaperSize.Letter, "en", 215.9, 279.4, "10:45")]
    [InlineData(PaperSize.A4, "es", 210, 297, "10:45")]
    [InlineData(PaperSize.Letter, "es", 215.9, 279.4, "10:45")]
    public void Of_AnyPaper_HoldsCodeAddressStepsAndItsEnd(PaperSize size, string language, double widthMm, double heightMm, string until)
    {
        var options = (language == "en" ? CardLessons.English : CardLessons.Spanish) with { Size = size };
        var page = JoinPoster.Of(Invitation, options);
        Assert.Equal((widthMm, heightMm), (Math.Round(page.WidthMm, 6), Math.Round(page.HeightMm, 6)));
        Tidy.Check(page);
        var run = PageText.Run(page);
        foreach (var words in (string[])["K7M4QX", "7Heron", "192.0.2.17:5080/floor", until, "2026"]) Assert.Contains(words, run);
        Assert.Equal(["1", "2", "3"], page.Words().Where(w => w.Length == 1));
        Assert.Contains("K7M4QX", page.Description);
    }

    // Read across a hall, about 5 m: a capital is 0.668 of its type; 5 minutes of arc are just read by usual sight. Source: [ISO8596].
    [Fact]
    public void Of_ACode_IsReadFromTheMiddleOfAHall()
    {
        var code = JoinPoster.Of(Invitation, CardLessons.English).Shapes.OfType<Text>().MaxBy(t => t.SizePt)!;
        Assert.Equal("K7M 4QX", code.Content);
        Assert.True(Math.Atan(code.SizePt * 25.4 / 72 * 0.668 / 15_000) * 180 / Math.PI * 60 >= 5, $"{code.SizePt} pt");
    }

    [Theory]
    [InlineData("a-machine-with-a-rather-long-name-in-a-school.local:5080/floor")]
    [InlineData("[2001:db8:85a3:1234:5678:8a2e:370:7334]:5080/floor")]
    public void Of_ALongAddressAndWideSpacing_StaysOnThePage(string address)
    {
        var invitation = Invitation with { Address = address, ClassName = "The combined movement group of years seven and eight, Thursday" };
        Tidy.Check(JoinPoster.Of(invitation, CardLessons.Spanish with { HasWideSpacing = true, Size = PaperSize.Letter }));
    }

    [Fact]
    public void Of_ThePrintedPage_AnotherDecoderReadsTheLink()
    {
        using var file = new PrintedFile([JoinPoster.Of(Invitation, CardLessons.English)]);
        Tool.Run("pdftoppm", "-r", "100", "-gray", "-png", "-singlefile", file.Name, file.Beside("page"));
        Assert.Equal(Invitation.Link, Tool.Run("zbarimg", "--quiet", "--raw", file.Beside("page.png")).TrimEnd('\n'));
    }

    [Fact]
    public void Of_WithoutACode_IsRefused() =>
        Assert.Throws<ArgumentException>(() => JoinPoster.Of(Invitation with { Code = "" }, CardLessons.English));
}
