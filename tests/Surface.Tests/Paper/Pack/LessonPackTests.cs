using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Pack;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Paper.Cards;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper.Pack;

public class LessonPackTests
{
    [Fact]
    public void Of_Lesson_HoldsEveryPartWithItsPageNumbers()
    {
        var record = CardLessons.ShortLesson();
        var pages = LessonPack.Of(record, LessonPlans.None, CardLessons.English);
        // A note, the lesson page, the list, one page of cards, a sheet for each of three.
        Assert.Equal(7, pages.Count);
        Assert.Equal(Enumerable.Range(1, 7).Select(i => $"{i} / 7"), pages.Select(p => p.Scene.Words().Last()));
        Assert.Equal(["2", "3", "4", "5"], pages[0].Scene.Words().Where(w => w.Contains("from page")).Select(w => w.Split(' ')[^1]));
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void Of_AnyWay_SheetsAreTheFormsPrintedAlone(bool isTwoUp, bool isLargePrint)
    {
        var record = CardLessons.ShortLesson();
        var options = CardLessons.English with { IsTwoUp = isTwoUp, IsLargePrint = isLargePrint, SpareCount = 1 };
        var alone = TaskSheetPages.Of(record, options);
        var pack = LessonPack.Of(record, LessonPlans.None, options).Where(p => p.Forms.Count > 0).ToList();
        Assert.Equal(alone.SelectMany(p => p.Forms).Select(f => f.Kept.Tag), pack.SelectMany(p => p.Forms).Select(f => f.Kept.Tag));
        foreach (var (page, form) in pack.SelectMany(p => p.Forms.Select(f => (p, f))))
        {
            // The number keeps away from what a reader looks for: anchors, and the code with its quiet zone.
            var room = ((Text)page.Scene.Shapes[^1]).Room();
            foreach (var anchor in form.Layout.Anchors)
            {
                var (x, y, half) = (form.LeftMm + anchor.XMm * form.ScaleFraction, form.TopMm + anchor.YMm * form.ScaleFraction, anchor.SizeMm * form.ScaleFraction);
                Assert.True(room.Left > x + half || room.Right < x - half || room.Top > y + half || room.Bottom < y - half, $"{room} meets {anchor}.");
            }
            var code = form.Layout.Code;
            Assert.True(room.Right < form.LeftMm + (code.XMm - 3) * form.ScaleFraction || room.Top > form.TopMm + (code.YMm + code.SizeMm + 3) * form.ScaleFraction);
        }
    }

    [Fact]
    public void Of_BothSides_BeginsEveryPartOnASheetOfItsOwn()
    {
        var pages = LessonPack.Of(CardLessons.ShortLesson(), LessonPlans.None, CardLessons.English with { IsTwoSided = true });
        Assert.Equal(0, pages.Count % 2);
        Assert.Equal(["3", "5", "7", "9"], pages[0].Scene.Words().Where(w => w.Contains("from page")).Select(w => w.Split(' ')[^1]));
        Assert.All(pages.Where(p => p.Scene.Shapes.Count == 0), p => Assert.Equal("Empty page.", p.Scene.Description));
        Assert.Equal($"9 / {pages.Count}", pages[8].Scene.Words().Last());
        Assert.NotEmpty(pages[8].Forms);
    }

    [Fact]
    public void Of_NoPupils_IsEmpty() => Assert.Empty(LessonPack.Of(PaperLessons.Of(0, PaperLessons.Throw), LessonPlans.None, CardLessons.English));

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Of_LongestLesson_CoverIsOneTidyPage(PaperSize size)
    {
        var cover = LessonPack.Of(CardLessons.LongLesson(), LessonPlans.None, CardLessons.Spanish with { Size = size })[0].Scene;
        Tidy.Check(cover);
        Assert.Contains("Unahojaporalumno:desdelapágina", cover.Run());
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_ShortLesson_CoverMatchesApproved(string language) => Snapshot.Match(
        LessonPack.Of(CardLessons.ShortLesson(), LessonPlans.None, language == "en" ? CardLessons.English : CardLessons.Spanish)[0].Scene.Listing(), Snapshooter.SnapshotNameExtension.Create(language));

    [Fact]
    public void Of_Written_HasEmbeddedFontsAndTextToSelect()
    {
        using var file = new PrintedFile([.. LessonPack.Of(CardLessons.ShortLesson(), LessonPlans.None, CardLessons.Spanish).Select(p => p.Scene)], CultureInfo.GetCultureInfo("es"));
        var fonts = Tool.Run("pdffonts", file.Name).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
        Assert.NotEmpty(fonts);
        // Columns from the right: object id (two), unicode, subset, embedded.
        Assert.All(fonts, line => Assert.Equal("yes", line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^5]));
        var text = Tool.Run("pdftotext", "-layout", file.Name, "-");
        Assert.Contains("Para quien dé esta clase", text);
        Assert.Contains("Preguntas para hacer", text);
    }
}
