using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper.Cards;

public class CueCardPagesTests
{
    [Theory]
    [InlineData(PaperSize.A4, true)]
    [InlineData(PaperSize.A4, false)]
    [InlineData(PaperSize.Letter, true)]
    public void Of_LongestWords_FitWholeEightOnAPage(PaperSize size, bool hasFigures)
    {
        var record = CardLessons.LongLesson(hasFigures);
        var pages = CueCardPages.Of(record, CardLessons.Spanish with { Size = size });
        Assert.Equal(2, pages.Count);
        Assert.All(pages, p => Tidy.Check(p));
        var run = string.Concat(pages.Select(PageText.Run));
        foreach (var cue in record.Sheet!.Content.Tasks[0].Cues) Assert.Equal(3, run.Split(cue.Replace(" ", "")).Length - 1);
    }

    [Fact]
    public void Of_LevelsWithFigures_TakeTurnsAndSayWhatCanBeFelt()
    {
        var page = Assert.Single(CueCardPages.Of(PaperLessons.Of(1, CardLessons.Figures), CardLessons.English));
        Assert.Equal(4, page.Words().Count(w => w.StartsWith("What you can feel", StringComparison.Ordinal)));
        Assert.NotEmpty(page.Shapes.OfType<Outline>());
    }

    [Fact]
    public void Of_NoFigures_SaysNothingAboutFeeling()
    {
        var page = Assert.Single(CueCardPages.Of(PaperLessons.Of(1, PaperLessons.Throw), CardLessons.English));
        Assert.DoesNotContain("What you can feel", string.Concat(page.Words()));
        Assert.Empty(page.Shapes.OfType<Outline>());
    }

    [Fact]
    public void Of_AnyPage_MarksTheCutsInsideWhatIsPrinted()
    {
        var page = CueCardPages.Of(PaperLessons.Of(1, PaperLessons.Throw), CardLessons.English)[0];
        var marks = page.Shapes.OfType<Line>().ToList();
        Assert.All(marks, m => Assert.True(Math.Min(m.X1Mm, m.Y1Mm) >= 6 && Math.Max(m.X2Mm, 0) <= 204 && m.Y2Mm <= 291));
        // Across at each quarter of the height, at both edges and in the middle.
        Assert.Equal([74.25, 148.5, 222.75], marks.Where(m => m.Y1Mm == m.Y2Mm).Select(m => m.Y1Mm).Distinct().Order());
    }

    [Fact]
    public void Of_SmallLesson_MatchesApproved() => Snapshot.Match(CueCardPages.Of(PaperLessons.Of(1, CardLessons.Figures), CardLessons.Spanish)[0].Listing());
}
