using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Schools;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Slantwise.Surface.Tests.Paper;

public sealed partial class PdfWriterTests
{
    private const double MmPerPt = 25.4 / 72;
    private static readonly CultureInfo En = CultureInfo.GetCultureInfo("en");

    // A4 is 210 by 297 mm: [ISO216]. Letter is 8.5 by 11 inches: [ASMEY14].
    [Theory]
    [InlineData(PaperSize.A4, 210, 297)]
    [InlineData(PaperSize.Letter, 215.9, 279.4)]
    public void Write_PaperSize_IsExact(PaperSize size, double widthMm, double heightMm)
    {
        using var file = new PrintedFile(PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot), new PaperOptions(size, En)));
        using (var pdf = PdfDocument.Open(file.Name))
        {
            Assert.InRange(pdf.GetPage(1).Width * MmPerPt, widthMm - 0.1, widthMm + 0.1);
            Assert.InRange(pdf.GetPage(1).Height * MmPerPt, heightMm - 0.1, heightMm + 0.1);
        }
        var points = PageSize().Match(Tool.Run("pdfinfo", file.Name));
        Assert.Equal(widthMm, double.Parse(points.Groups[1].ValueSpan, CultureInfo.InvariantCulture) * MmPerPt, 0.1);
        Assert.Equal(heightMm, double.Parse(points.Groups[2].ValueSpan, CultureInfo.InvariantCulture) * MmPerPt, 0.1);
    }

    [Fact]
    public void Write_Fonts_AreOurTwoEmbedded()
    {
        using var file = new PrintedFile(PaperLessons.Pages(PaperLessons.Of(2, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, En)));
        var fonts = Tool.Run("pdffonts", file.Name).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.Equal(2, fonts.Count);
        // The columns after the encoding: embedded, subset, with a map to Unicode.
        Assert.All(fonts, f => Assert.Matches(@"AtkinsonHyperlegibleNext-(Regular|Bold) .*Identity-H\s+yes yes yes", f));
    }

    [Fact]
    public void Write_TitleAndLanguage_AreDeclared()
    {
        using var file = new PrintedFile(
            PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, En)), CultureInfo.GetCultureInfo("es"));
        using var pdf = PdfDocument.Open(file.Name);
        Assert.Equal("Balance 2, 5B", pdf.Information.Title);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Create("Lang"), out StringToken language));
        Assert.Equal("es", language.Data);
    }

    [Fact]
    public void Write_ManySheets_IsSoundForAStrictReader()
    {
        var record = PaperLessons.Of(30, PaperLessons.OneFoot, PaperLessons.Rope);
        using var file = new PrintedFile(
            [.. PaperLessons.Pages(record, new PaperOptions(PaperSize.A4, En)), .. ClassSheetPages.Of(record, new PaperOptions(PaperSize.A4, En))]);
        Assert.Contains("No syntax or stream encoding errors found", Tool.Run("qpdf", "--check", file.Name));
    }

    [Fact]
    public void Write_Text_ReadsBackWithAccents()
    {
        using var file = new PrintedFile(PaperLessons.Pages(
            PaperLessons.Of(30, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, CultureInfo.GetCultureInfo("es"))));
        var text = Tool.Run("pdftotext", file.Name, "-");
        Assert.Contains("Łukasz", text);
        Assert.Contains("Søren", text);
        Assert.Contains("¿Por dónde empiezas?", text);
        Assert.Contains("12 de marzo de 2026", text);
    }

    // At 300 dots an inch a pixel is 0.085 mm; 0.2 mm is what a reader of marks may rely on.
    [Fact]
    public void Write_Boxes_LieWhereTheSceneSays()
    {
        var page = PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, En))[0];
        using var file = new PrintedFile([page]);
        Tool.Run("pdftoppm", "-r", "300", "-gray", "-singlefile", file.Name, file.Beside("page"));
        var image = GreyPage.Read(file.Beside("page.pgm"), 300);
        var boxes = page.Shapes.OfType<Box>().Where(b => b.StrokeMm > 0).ToList();
        Assert.True(boxes.Count > 30);
        foreach (var box in boxes)
        {
            var (x, y) = (box.XMm + box.WidthMm / 2, box.YMm + box.HeightMm / 2);
            // A little off the middle, where a number may stand.
            Assert.InRange(image.EdgeAcrossMm(box.XMm, y, isVertical: true) - box.XMm, -0.2, 0.2);
            Assert.InRange(image.EdgeAcrossMm(box.XMm + box.WidthMm, y, isVertical: true) - box.XMm - box.WidthMm, -0.2, 0.2);
            Assert.InRange(image.EdgeAcrossMm(box.YMm, x, isVertical: false) - box.YMm, -0.2, 0.2);
            Assert.InRange(image.EdgeAcrossMm(box.YMm + box.HeightMm, x, isVertical: false) - box.YMm - box.HeightMm, -0.2, 0.2);
        }
    }

    [Fact]
    public void Write_EveryKindOfShape_LeavesInkOfItsOwn()
    {
        Scene With(params Shape[] shapes) => new(40, 40, shapes, "");
        double Ink(Scene scene)
        {
            using var file = new PrintedFile([scene]);
            Tool.Run("pdftoppm", "-r", "300", "-gray", "-singlefile", file.Name, file.Beside("page"));
            return GreyPage.Read(file.Beside("page.pgm"), 300).InkMm2;
        }
        // Areas by hand: the disc π·10², the square 10², the triangle 10·10/2, lines length by width, half the length where dashed 4 on 3 off.
        Assert.Equal(Math.PI * 100, Ink(With(new Disc(20, 20, 10, Tone.Ink))), 2.0);
        Assert.Equal(100, Ink(With(new Box(10, 10, 10, 10, Tone.Ink))), 1.0);
        Assert.Equal(50, Ink(With(new Pen().MoveTo(10, 10).LineTo(20, 10).LineTo(10, 20).Close().Fill(Tone.Ink))), 1.0);
        Assert.Equal(20, Ink(With(new Line(10, 20, 30, 20, 1, Tone.Ink))), 0.5);
        Assert.Equal(12, Ink(With(new Line(10, 20, 31, 20, 1, Tone.Ink, IsDashed: true))), 0.5);
        Assert.Equal(0, Ink(With(new Box(10, 10, 10, 10, Tone.Ground))), 0.01);
        // Of a stroke 2 wide around a square of 10 the outer half shows: 4 · 10 · 1 and four round corners, π · 1².
        var square = new Pen().MoveTo(10, 10).LineTo(20, 10).LineTo(20, 20).LineTo(10, 20).Close().Stroke(2, Tone.Ink);
        Assert.Equal(40 + Math.PI, Ink(With(square with { Inside = Tone.Ground })), 1.0);
        Assert.Equal(140 + Math.PI, Ink(With(square with { Inside = Tone.Ink })), 1.5);
    }

    [Fact]
    public void Write_NoPage_Throws() => Assert.Throws<ArgumentException>(() => PdfWriter.Write([], "", En, Stream.Null));

    [Fact]
    public void Write_PageWithoutSize_Throws() =>
        Assert.Throws<ArgumentException>(() => PdfWriter.Write([new Scene(0, 10, [], "")], "", En, Stream.Null));

    [GeneratedRegex(@"Page size:\s+([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSize();
}
