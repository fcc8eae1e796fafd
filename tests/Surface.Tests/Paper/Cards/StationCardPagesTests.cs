using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper.Cards;

public class StationCardPagesTests
{
    [Theory]
    [InlineData(PaperSize.A4, true)]
    [InlineData(PaperSize.A4, false)]
    [InlineData(PaperSize.Letter, true)]
    public void Of_LongestWords_FitWholeOnACardATask(PaperSize size, bool hasFigures)
    {
        var record = CardLessons.LongLesson(hasFigures);
        var pages = StationCardPages.Of(record, CardLessons.Spanish with { Size = size });
        Assert.All(pages, p => Tidy.Check(p));
        var run = string.Concat(pages.Select(PageText.Run));
        foreach (var task in record.Sheet!.Content.Tasks)
            foreach (var words in (string[])[task.Name, task.Purpose, task.Caution, .. task.Cues, .. task.Levels.Select(l => l.Name)]) Assert.Contains(words.Replace(" ", ""), run);
    }

    [Fact]
    public void Of_ThreeTasks_AreTwoOnAPageOrAPageEach()
    {
        var record = PaperLessons.Of(2, CardLessons.Figures, PaperLessons.Rope, PaperLessons.Throw);
        Assert.Equal([(210.0, 297.0), (210, 297)], StationCardPages.Of(record, CardLessons.English).Select(p => (p.WidthMm, p.HeightMm)));
        Assert.Equal([(297.0, 210.0), (297, 210), (297, 210)], StationCardPages.Of(record, CardLessons.English with { CardSize = CardSize.FullPage }).Select(p => (p.WidthMm, p.HeightMm)));
    }

    [Fact]
    public void Of_FullPage_IsLargerThanHalf()
    {
        var record = PaperLessons.Of(2, CardLessons.Figures);
        double Cue(CardSize size) => StationCardPages.Of(record, CardLessons.English with { CardSize = size })[0].Shapes.OfType<Text>().Single(t => t.Content == "Hips level").SizePt;
        Assert.True(Cue(CardSize.FullPage) > 1.2 * Cue(CardSize.HalfPage));
    }

    // A capital is 0.668 of its type; 5 minutes of arc are just read by usual sight. Source: [ISO8596].
    [Theory]
    [InlineData(CardSize.HalfPage, 5)]
    [InlineData(CardSize.FullPage, 7)]
    public void Of_OrdinaryTask_IsReadFromTwoMetres(CardSize size, double leastMinutes)
    {
        var texts = StationCardPages.Of(PaperLessons.Of(1, CardLessons.Figures), CardLessons.English with { CardSize = size })[0].Shapes.OfType<Text>();
        Assert.All(texts, t => Assert.True(Math.Atan(t.SizePt * 25.4 / 72 * 0.668 / 2000) * 180 / Math.PI * 60 >= leastMinutes, $"'{t.Content}' is {t.SizePt} pt."));
    }

    [Fact]
    public void Of_PupilWithOtherLevels_ShowsNothingOfItAndNoLevelNumber()
    {
        var record = PaperLessons.Of(4, PaperLessons.Tripod);
        var page = StationCardPages.Of(record, CardLessons.English)[0];
        Assert.Equal(page.Listing(), StationCardPages.Of(record.WithRestriction(record.Pupils[2], BodyDemand.Inversion), CardLessons.English)[0].Listing());
        // Three cues, four levels offered: numbers are those of the cues.
        Assert.Equal(["1", "2", "3"], page.Words().Where(w => int.TryParse(w, out _)).Order());
        Assert.DoesNotContain("Threepointswiththehead", page.Run());
    }

    [Fact]
    public void Of_Caution_HasASignAndNothingElseHas()
    {
        Outline[] Signs(SheetTask task) => [.. StationCardPages.Of(PaperLessons.Of(1, task), CardLessons.English)[0].Shapes.OfType<Outline>().Where(o => o.Tone == Tone.Caution)];
        Assert.Single(Signs(PaperLessons.Tripod));
        Assert.Empty(Signs(PaperLessons.OneFoot));
    }

    [Fact]
    public void Of_NoFrozenSheet_Throws() =>
        Assert.Throws<ArgumentException>(() => StationCardPages.Of(PaperLessons.Of(1, PaperLessons.OneFoot) with { Sheet = null }, CardLessons.English));

    [Fact]
    public void Of_SmallLesson_MatchesApproved() => Snapshot.Match(StationCardPages.Of(PaperLessons.Of(1, CardLessons.Figures, PaperLessons.Tripod), CardLessons.English)[0].Listing());
}
