using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Posters;
using Slantwise.Records.Sheets;
using Slantwise.Surface.Tests.Paper.Cards;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper.Posters;

public class PosterPagesTests
{
    [Theory]
    [InlineData(PaperSize.A4, PosterSize.OnePage, 4, 297, 210)]
    [InlineData(PaperSize.A4, PosterSize.TwoPages, 8, 210, 297)]
    [InlineData(PaperSize.A4, PosterSize.Double, 4, 420, 297)]
    [InlineData(PaperSize.Letter, PosterSize.OnePage, 4, 279.4, 215.9)]
    [InlineData(PaperSize.Letter, PosterSize.Double, 4, 431.8, 279.4)]
    public void Of_LongestWords_FitWhole(PaperSize size, PosterSize poster, int pageCount, double widthMm, double heightMm)
    {
        var record = CardLessons.LongLesson();
        var pages = PosterPages.Of(record, CardLessons.Spanish with { Size = size, PosterSize = poster });
        Assert.Equal(pageCount, pages.Count);
        Assert.All(pages, p => Assert.Equal((widthMm, heightMm), (Math.Round(p.WidthMm, 6), Math.Round(p.HeightMm, 6))));
        Assert.All(pages, p => Tidy.Check(p, hasWordsOnDrawings: p.Description.Contains("pasos", StringComparison.Ordinal)));
        var run = string.Concat(pages.Select(PageText.Run));
        foreach (var task in record.Sheet!.Content.Tasks)
            foreach (var words in (string[])[task.Name, task.Purpose, task.Caution, .. task.Cues, .. task.Levels.Select(l => l.Name)]) Assert.Contains(words.Replace(" ", ""), run);
    }

    // A capital is 0.668 of its type; 5 minutes of arc are just read by usual sight. Source: [ISO8596].
    [Theory]
    [InlineData(PosterSize.OnePage, 5)]
    [InlineData(PosterSize.TwoPages, 7)]
    public void Of_OrdinaryTask_HasCuesToReadFromFiveMetres(PosterSize size, double leastMinutes)
    {
        var texts = PosterPages.Of(PaperLessons.Of(1, CardLessons.Figures), CardLessons.English with { PosterSize = size }).SelectMany(p => p.Shapes.OfType<Text>());
        var cuePt = texts.Single(t => t.Content == "Hips level").SizePt;
        Assert.True(Math.Atan(cuePt * 25.4 / 72 * 0.668 / 5000) * 180 / Math.PI * 60 >= leastMinutes, $"{cuePt} pt");
    }

    [Fact]
    public void Of_DoublePoster_HasNothingAcrossItsMiddle()
    {
        var pages = PosterPages.Of(CardLessons.LongLesson(), CardLessons.Spanish with { PosterSize = PosterSize.Double });
        foreach (var text in pages.SelectMany(p => p.Shapes.OfType<Text>()))
            Assert.True(text.Room().Right <= 210 - 6 || text.Room().Left >= 210 + 6, $"'{text.Content}' stands across the joint.");
        foreach (var box in pages.SelectMany(p => p.Shapes.OfType<Box>()))
            Assert.True(box.XMm + box.WidthMm <= 210 - 6 || box.XMm >= 210 + 6, $"{box} stands across the joint.");
    }

    [Fact]
    public void Of_TwoPages_AreTheDoublePosterCutInTheMiddle()
    {
        var options = CardLessons.English with { IsCream = true };
        var record = PaperLessons.Of(1, CardLessons.Figures);
        var whole = PosterPages.Of(record, options with { PosterSize = PosterSize.Double });
        var halves = PosterPages.Of(record, options with { PosterSize = PosterSize.TwoPages });
        for (var i = 0; i < whole.Count; i++)
            Assert.Equal(whole[i].Words().Order(), halves[2 * i].Words().Concat(halves[2 * i + 1].Words()).Order());
        Assert.All(halves, h => Assert.Equal(new Box(0, 0, 210, 297, Tone.Cream), h.Shapes[0]));
    }

    [Theory]
    [InlineData(PredictionKind.SuccessCount, "? / 5", 4)]
    [InlineData(PredictionKind.HoldS, "? s", 4)]
    [InlineData(PredictionKind.Nothing, null, 3)]
    public void Of_AnyPrediction_ShowsTheStepsThatTheSheetHas(PredictionKind kind, string? guess, int stepCount)
    {
        var page = PosterPages.Of(PaperLessons.Of(1, new SheetContent { Title = "x", Tasks = [PaperLessons.Throw], Predicts = kind }), CardLessons.English)[^1];
        Assert.Equal(stepCount, page.Words().Count(w => w is "1" or "2" or "3" or "4"));
        if (guess is not null) Assert.Contains(guess, page.Words());
        // No way on is larger than another.
        Assert.Single(page.Shapes.OfType<Text>().Where(t => t.Content is "easier" or "same" or "harder").Select(t => t.SizePt).Distinct());
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_SmallLesson_MatchesApproved(string language)
    {
        var options = language == "en" ? CardLessons.English : CardLessons.Spanish;
        Snapshot.Match(string.Join("\n---\n", PosterPages.Of(PaperLessons.Of(1, CardLessons.Figures), options).Select(p => p.Listing())), Snapshooter.SnapshotNameExtension.Create(language));
    }
}
