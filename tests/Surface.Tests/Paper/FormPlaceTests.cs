using System.Globalization;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>Positions on the finished PDF, measured with poppler's eyes against the layout that is kept.</summary>
public sealed class FormPlaceTests
{
    private const double Dpi = 600;
    private const double WithinMm = 0.1;

    [Theory]
    [InlineData(PaperSize.A4, "usual")]
    [InlineData(PaperSize.Letter, "usual")]
    [InlineData(PaperSize.A4, "large")]
    [InlineData(PaperSize.A4, "two-up")]
    [InlineData(PaperSize.Letter, "two-up")]
    public void Write_AForm_LiesWhereItsLayoutSays(PaperSize size, string look)
    {
        var options = new PaperOptions(size, CultureInfo.GetCultureInfo("en")) { IsLargePrint = look == "large", IsTwoUp = look == "two-up" };
        var pages = TaskSheetPages.Of(PaperLessons.Of(2, PaperLessons.OneFoot), options).Where(p => p.Forms.Any(f => f.Layout.Fields.Count > 0)).ToList();
        Assert.NotEmpty(pages);
        foreach (var page in pages.Take(1))
        {
            using var file = new PrintedFile([page.Scene]);
            Tool.Run("pdftoppm", "-r", "600", "-gray", "-singlefile", file.Name, file.Beside("page"));
            var image = GreyPage.Read(file.Beside("page.pgm"), Dpi);
            foreach (var form in page.Forms) AssertPlaces(image, form);
        }
    }

    private static void AssertPlaces(GreyPage image, PrintedForm form)
    {
        double X(double mm) => form.LeftMm + mm * form.ScaleFraction;
        double Y(double mm) => form.TopMm + mm * form.ScaleFraction;
        foreach (var anchor in form.Layout.Anchors)
        {
            var half = anchor.SizeMm / 2;
            // Off the middle, where the hollow one is black too.
            var off = anchor.SizeMm * 0.375;
            Assert.Equal(X(anchor.XMm), image.DarkMiddleMm(X(anchor.XMm - half), X(anchor.XMm + half), Y(anchor.YMm + off), isVertical: true), WithinMm);
            Assert.Equal(Y(anchor.YMm), image.DarkMiddleMm(Y(anchor.YMm - half), Y(anchor.YMm + half), X(anchor.XMm + off), isVertical: false), WithinMm);
            Assert.Equal(anchor.IsHollow, image.GreyAt(X(anchor.XMm), Y(anchor.YMm)) > 200);
        }
        foreach (var field in form.Layout.Fields)
        {
            var (x, y) = (X(field.XMm + field.WidthMm / 2), Y(field.YMm + field.HeightMm / 2));
            Assert.Equal(X(field.XMm), image.EdgeAcrossMm(X(field.XMm), y, isVertical: true), WithinMm);
            Assert.Equal(X(field.XMm + field.WidthMm), image.EdgeAcrossMm(X(field.XMm + field.WidthMm), y, isVertical: true), WithinMm);
            Assert.Equal(Y(field.YMm), image.EdgeAcrossMm(Y(field.YMm), x, isVertical: false), WithinMm);
            Assert.Equal(Y(field.YMm + field.HeightMm), image.EdgeAcrossMm(Y(field.YMm + field.HeightMm), x, isVertical: false), WithinMm);
            Assert.Equal(255, image.GreyAt(x, y));
        }
    }
}
