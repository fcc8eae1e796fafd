using System.Globalization;
using Slantwise.Paper;
using Slantwise.Records.Scans;
using Slantwise.Records.Sheets;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Slantwise.Surface.Tests.Paper;

public sealed class FormCodeTests
{
    private static readonly CultureInfo En = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Of_EveryForm_CodeSaysLessonPupilPageAndLayout()
    {
        var record = PaperLessons.Of(2, PaperLessons.OneFoot, PaperLessons.Throw);
        var pages = TaskSheetPages.Of(record, new PaperOptions(PaperSize.A4, En) { SpareCount = 2, FirstSpareNumber = 7 });
        var codes = pages.Select(p => Assert.Single(p.Forms).Code).ToList();
        Assert.All(codes, c => Assert.Equal((SheetCode.LessonTagOf(record.Lesson.Id, record.Sheet!.SheetId), 1), (c.LessonTag, c.SheetVersion)));
        Assert.Equal([1, 2, 1, 2, 1, 2, 1, 2], codes.Select(c => c.PageNumber));
        Assert.Equal([.. record.Pupils.SelectMany(p => new[] { SheetCode.TagOf(p.Id), SheetCode.TagOf(p.Id) }), 7L, 7L, 8L, 8L], codes.Select(c => c.PupilTag));
        Assert.Equal([true, true, true, true, false, false, false, false], codes.Select(c => c.IsNamed));
        Assert.All(pages, p => Assert.Equal(p.Forms[0].Kept.Tag, p.Forms[0].Code.LayoutTag));
        // The same page of two pupils is one layout.
        Assert.Equal(codes[0].LayoutTag, codes[2].LayoutTag);
        Assert.NotEqual(codes[0].LayoutTag, codes[1].LayoutTag);
    }

    [Theory]
    [InlineData(PaperSize.A4, false)]
    [InlineData(PaperSize.Letter, false)]
    [InlineData(PaperSize.A4, true)]
    [InlineData(PaperSize.Letter, true)]
    public void Of_PrintedAt300Dpi_CodeReadsBack(PaperSize size, bool isTwoUp)
    {
        var record = PaperLessons.Of(2, PaperLessons.OneFoot);
        var page = TaskSheetPages.Of(record, new PaperOptions(size, En) { IsTwoUp = isTwoUp })[0];
        using var file = new PrintedFile([page.Scene]);
        Tool.Run("pdftoppm", "-r", "300", "-gray", "-singlefile", file.Name, file.Beside("page"));
        var image = GreyPage.Read(file.Beside("page.pgm"), 300);
        foreach (var form in page.Forms)
        {
            double OnPage(double offsetMm, double mm) => offsetMm + mm * form.ScaleFraction;
            var quiet = 3 * form.ScaleFraction;
            var around = image.Cut(
                OnPage(form.LeftMm, form.Layout.Code.XMm) - quiet, OnPage(form.TopMm, form.Layout.Code.YMm) - quiet, form.Layout.Code.SizeMm * form.ScaleFraction + 2 * quiet);
            var source = new RGBLuminanceSource(around.Pixels, around.WidthPx, around.HeightPx, RGBLuminanceSource.BitmapFormat.Gray8);
            var read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)));
            Assert.NotNull(read);
            Assert.Equal(form.Code, SheetCode.Read(read.Text, record.School.Id));
            Assert.Equal("M", read.ResultMetadata[ResultMetadataType.ERROR_CORRECTION_LEVEL]);
        }
    }

    // A second decoder, where the machine has one: skipped, and said so, where it has none.
    [Fact]
    public void Of_PrintedAt300Dpi_AnotherDecoderReadsIt()
    {
        var record = PaperLessons.Of(1, PaperLessons.OneFoot);
        var page = TaskSheetPages.Of(record, new PaperOptions(PaperSize.A4, En))[0];
        using var file = new PrintedFile([page.Scene]);
        Tool.Run("pdftoppm", "-r", "300", "-gray", "-png", "-singlefile", file.Name, file.Beside("page"));
        var text = Tool.Run("zbarimg", "--quiet", "--raw", file.Beside("page.png"));
        Assert.Equal(page.Forms[0].Code, SheetCode.Read(text.TrimEnd('\n'), record.School.Id));
    }

    [Fact]
    public void Of_Observation_CodeNamesNobodyAndTheLayoutTheRows()
    {
        var record = PaperLessons.Of(40, PaperLessons.OneFoot);
        var pages = ObservationPages.Of(record, new PaperOptions(PaperSize.A4, En));
        Assert.Equal(2, pages.Count);
        Assert.All(pages, p => Assert.Equal((0L, false), (p.Forms[0].Code.PupilTag, p.Forms[0].Code.IsNamed)));
        Assert.Equal([20, 20], pages.Select(p => p.Forms[0].Kept.Form().RowTags.Count));
        Assert.NotEqual(pages[0].Forms[0].Kept.Tag, pages[1].Forms[0].Kept.Tag);
        // Another class on the same sheet has other rows, and so another layout, though it looks the same.
        var others = record with { Pupils = [.. record.Pupils.Select((_, i) => PaperLessons.Pupil(500 + i, $"Kim {i}"))] };
        Assert.NotEqual(pages[0].Forms[0].Kept.Tag, ObservationPages.Of(others, new PaperOptions(PaperSize.A4, En))[0].Forms[0].Kept.Tag);
    }

    [Fact]
    public void Of_TwoUpAndLargePrint_Throws() => Assert.Throws<ArgumentException>(
        () => TaskSheetPages.Of(PaperLessons.Of(1, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, En) { IsTwoUp = true, IsLargePrint = true }));

    [Theory]
    [InlineData(0)]
    [InlineData(10_000)]
    public void Of_FirstSpareNumberOutOfRange_Throws(int number) => Assert.Throws<ArgumentOutOfRangeException>(
        () => TaskSheetPages.Of(PaperLessons.Of(1, PaperLessons.OneFoot), new PaperOptions(PaperSize.A4, En) { FirstSpareNumber = number }));

    [Fact]
    public void Of_TwoSided_EveryPupilBeginsOnAFront()
    {
        var record = PaperLessons.Of(3, new SheetContent { Title = "Balance", Tasks = [PaperLessons.OneFoot, PaperLessons.Throw, PaperLessons.Throw] });
        var pages = TaskSheetPages.Of(record, new PaperOptions(PaperSize.A4, En) { IsTwoSided = true });
        Assert.Equal(12, pages.Count);
        Assert.Equal([0, 4, 8], Enumerable.Range(0, 12).Where(i => pages[i].Forms is [{ Code.PageNumber: 1 }]));
        Assert.All(new[] { 3, 7, 11 }, i => Assert.Empty(pages[i].Scene.Shapes));
    }

    [Fact]
    public void Of_TwoUpAndTwoSided_BackLiesBehindItsFront()
    {
        var record = PaperLessons.Of(2, PaperLessons.OneFoot, PaperLessons.Throw);
        var pages = TaskSheetPages.Of(record, new PaperOptions(PaperSize.A4, En) { IsTwoUp = true, IsTwoSided = true });
        var (a, b) = (SheetCode.TagOf(record.Pupils[0].Id), SheetCode.TagOf(record.Pupils[1].Id));
        Assert.Equal([a, b], pages[0].Forms.Select(f => f.Code.PupilTag));
        // Turned over the short edge, left and right change places.
        Assert.Equal([b, a], pages[1].Forms.Select(f => f.Code.PupilTag));
        Assert.All(pages, p => Assert.Equal((297.0, 210.0), (p.Scene.WidthMm, p.Scene.HeightMm)));
    }
}
