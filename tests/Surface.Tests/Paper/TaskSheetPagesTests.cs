using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Posters;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper;

public class TaskSheetPagesTests
{
    private static readonly PaperOptions A4 = new(PaperSize.A4, CultureInfo.GetCultureInfo("en"));
    private static readonly PaperOptions Hoja = new(PaperSize.A4, CultureInfo.GetCultureInfo("es"));

    [Fact]
    public void Of_ClassOnOneTask_IsAPageAPupilByName()
    {
        var record = PaperLessons.Of(30, PaperLessons.OneFoot);
        var pages = PaperLessons.Pages(record, A4);
        Assert.Equal(30, pages.Count);
        var labels = pages.Select(p => p.Words().First()).ToList();
        // Alphabetical as English readers expect: accents do not send a name to the end.
        Assert.Equal(["Amara Okafor", "Ángel", "Ben"], labels.Take(3));
        foreach (var pupil in record.Pupils) Assert.Single(pages, p => p.Run().Contains(pupil.Label.Replace(" ", "") + pupil.Code));
    }

    [Theory]
    [InlineData(PaperSize.A4, "en")]
    [InlineData(PaperSize.Letter, "en")]
    [InlineData(PaperSize.A4, "es")]
    [InlineData(PaperSize.Letter, "es")]
    public void Of_UsualSheetOfTwoTasks_IsAPageATask(PaperSize size, string language)
    {
        var pages = PaperLessons.Pages(
            PaperLessons.Of(2, PaperLessons.OneFoot, PaperLessons.Throw), new PaperOptions(size, CultureInfo.GetCultureInfo(language)));
        Assert.Equal(4, pages.Count);
        Assert.Contains("One-foot balance", pages[0].Words());
        Assert.Contains("Throw to a target", pages[1].Words());
    }

    [Fact]
    public void Of_RestrictedPupil_CountsWhatIsOfferedWithoutAGap()
    {
        var record = PaperLessons.Of(3, new SheetContent { Title = "Ropes", Tasks = [PaperLessons.Rope] });
        record = record.WithRestriction(record.Pupils[1], BodyDemand.Impact);
        var pages = TaskSheetPages.Of(record, A4);

        Assert.Contains("Running", pages[0].Scene.Run());
        Assert.DoesNotContain("Running", pages[1].Scene.Run());
        Assert.DoesNotContain("Backwards", pages[1].Scene.Run());
        // The sheet's level 2 alone is left. It is the pupil's level 1, in its card; the field of each set knows it as 2.
        Assert.Equal(["1"], Numbers(pages[1].Scene));
        Assert.Equal(6, Numbers(pages[0].Scene).Count);
        Assert.Equal(["Level-1-1-2", "Level-1-2-2", "Level-1-3-2"], LevelKeys(pages[1]));
        Assert.Equal(18, LevelKeys(pages[0]).Count);
        // Nobody is singled out: what is left stands where it stands on every sheet.
        var places = pages[0].Forms[0].Layout.Fields.Select(f => (f.XMm, f.YMm)).ToHashSet();
        Assert.All(pages[1].Forms[0].Layout.Fields, f => Assert.Contains(places, p => Math.Abs(p.XMm - f.XMm) < 0.011));
    }

    [Fact]
    public void Of_RestrictedInTheMiddle_NoNumberIsMissing()
    {
        var record = PaperLessons.Of(2, PaperLessons.Tripod) with { };
        record = record with { School = record.School with { Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned } } };
        var levels = PaperLessons.Tripod.Levels.ToArray();
        levels[1] = levels[1] with { Demands = [BodyDemand.Impact] };
        record = record with { Sheet = record.Sheet! with { Content = record.Sheet.Content with { Tasks = [PaperLessons.Tripod with { Levels = levels }] } } };
        record = record.WithRestriction(record.Pupils[0], BodyDemand.Impact);
        var pages = TaskSheetPages.Of(record, A4);
        var own = pages.Single(p => p.Scene.Run().StartsWith(record.Pupils[0].Label.Replace(" ", ""), StringComparison.Ordinal));
        Assert.Equal(["1", "2", "3", "4"], Numbers(own.Scene));
        Assert.Equal([1, 3, 4, 5], LevelKeys(own).Select(k => SheetField.FromKey(k)!.Value).Where(f => f.SetNumber == 1).Select(f => f.Number));
    }

    [Fact]
    public void Of_RestrictionPastItsDay_RemovesNothing()
    {
        var record = PaperLessons.Of(1, PaperLessons.Rope);
        var ended = record.WithRestriction(record.Pupils[0], BodyDemand.Impact);
        ended = ended with { Restrictions = [ended.Restrictions[0] with { Until = record.Lesson.Date.AddDays(-1) }] };
        Assert.Equal(PaperLessons.Pages(record, A4)[0].Listing(), PaperLessons.Pages(ended, A4)[0].Listing());
    }

    [Fact]
    public void Of_PolicyForbids_LevelIsOnNoPage()
    {
        // Weight on the head is not allowed unless a school says so.
        var record = PaperLessons.Of(2, PaperLessons.Tripod);
        var pages = PaperLessons.Pages(record, A4 with { SpareCount = 1 });
        Assert.All(pages, p => Assert.DoesNotContain("Threepointswiththehead", p.Run()));

        var allowing = record with { School = record.School with { Policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned } } };
        Assert.All(PaperLessons.Pages(allowing, A4), p => Assert.Contains("Threepointswiththehead", p.Run()));
    }

    [Fact]
    public void Of_NothingLeftForAPupil_LeavesRoomToAgree()
    {
        var rope = PaperLessons.Rope with { Levels = [.. PaperLessons.Rope.Levels.Where(l => l.Demands.Count > 0)] };
        var record = PaperLessons.Of(1, rope);
        var page = Assert.Single(PaperLessons.Pages(record.WithRestriction(record.Pupils[0], BodyDemand.Impact), A4));
        Assert.Contains("How will you do it?", page.Words());
        Assert.Empty(Numbers(page));
    }

    [Theory]
    [InlineData("usual")]
    [InlineData("large")]
    [InlineData("two up")]
    public void Of_AdaptationOfOnePupil_IsInTheirTaskLikeItsPurposeAndOnNobodyElses(string look)
    {
        var options = A4 with { IsLargePrint = look == "large", IsTwoUp = look == "two up", SpareCount = 1 };
        var plain = PaperLessons.Of(3, PaperLessons.OneFoot, PaperLessons.Throw);
        var record = plain.WithAdaptation(plain.Pupils[1], PaperLessons.Throw, "Sitting, over the shoulder");
        var texts = PaperLessons.Pages(record, options).SelectMany(p => p.Shapes.OfType<Text>()).ToList();
        var own = Assert.Single(texts, t => t.Content.Contains("over the shoulder", StringComparison.Ordinal));
        Assert.Equal("Sitting, over the shoulder", own.Content);

        // By the look of the purpose above it, and right after it.
        var at = texts.IndexOf(own);
        var above = texts[at - 1];
        Assert.EndsWith(above.Content, PaperLessons.Throw.Purpose, StringComparison.Ordinal);
        Assert.Equal((above.XMm, above.SizePt, above.Weight, above.Tone), (own.XMm, own.SizePt, own.Weight, own.Tone));
        // Nothing else is said that is not said without it: no label, no sign.
        Assert.Equal(
            PaperLessons.Pages(plain, options).SelectMany(p => p.Words()).Append(own.Content).Order(StringComparer.Ordinal),
            texts.Select(t => t.Content).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Of_AdaptationOfOnePupil_IsOnNothingThatOthersSee()
    {
        var plain = PaperLessons.Of(3, PaperLessons.OneFoot, PaperLessons.Throw);
        var record = plain.WithAdaptation(plain.Pupils[1], PaperLessons.Throw, "Sitting, over the shoulder");
        foreach (var pages in (Func<LessonRecord, IReadOnlyList<Scene>>[])
        [
            r => ClassSheetPages.Of(r, A4), r => StationCardPages.Of(r, A4), r => CueCardPages.Of(r, A4), r => PosterPages.Of(r, A4),
            r => [.. ObservationPages.Of(r, A4).Select(p => p.Scene)], r => LessonPage.Of(r, LessonPlans.None, A4),
        ])
            Assert.Equal(pages(plain).Select(p => p.Listing()), pages(record).Select(p => p.Listing()));
    }

    [Fact]
    public void Of_SpareSheets_FollowWithAnEmptyNameLine()
    {
        var pages = PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot), A4 with { SpareCount = 2 });
        Assert.Equal(3, pages.Count);
        Assert.Equal("Name", pages[1].Words().First());
        Assert.Contains("No. 1", pages[1].Words());
        Assert.Equal(pages[1].Listing().Replace("No. 1", "No. 2"), pages[2].Listing());
    }

    [Fact]
    public void Of_NameBeyondOurLetters_PrintsTheCode()
    {
        var record = PaperLessons.Of(0, PaperLessons.OneFoot) with { Pupils = [PaperLessons.Pupil(6, "王小明"), PaperLessons.Pupil(7, null)] };
        var pages = PaperLessons.Pages(record, A4);
        Assert.Equal(["5B-07", "5B-08"], pages.Select(p => p.Words().First()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Of_Predictions_AskWhatTheSheetPredicts()
    {
        IEnumerable<string> Words(PredictionKind kind) => PaperLessons.Pages(
            PaperLessons.Of(1, new SheetContent { Title = "x", Tasks = [PaperLessons.OneFoot], TrialCount = 4, Predicts = kind }), A4)[0].Words();
        Assert.Single(Words(PredictionKind.SuccessCount), w => w == "Guess: how many?");
        Assert.Equal(3, Words(PredictionKind.HoldS).Count(w => w == "seconds"));
        Assert.DoesNotContain("I think", Words(PredictionKind.Nothing));
    }

    [Fact]
    public void Of_FullSheet_TakesTwoPagesATaskAndSaysSo()
    {
        var record = PaperLessons.Of(1, new SheetContent { Title = "Ropes", Tasks = [PaperLessons.Rope], SetCount = 4, TrialCount = 10 });
        var pages = PaperLessons.Pages(record, A4);
        Assert.Equal(2, pages.Count);
        Assert.Contains("Balance 2 · page 2 of 2", pages[1].Words());
        Assert.Contains("Rope jumping", pages[1].Words());
        Assert.Contains("Choose", pages[1].Words());
        // Every set once, and room for each of its trials.
        Assert.Equal(4, pages.Sum(p => p.Words().Count(w => w == "because")));
        // Over the trials and over the predictions.
        Assert.Equal(8, pages.Sum(p => p.Words().Count(w => w == "10")));
    }

    [Theory]
    [InlineData(DoseKind.HoldS, 1, "1 second", "1 segundo")]
    [InlineData(DoseKind.HoldS, 7.5, "7.5 seconds", "7,5 segundos")]
    [InlineData(DoseKind.RepetitionsCount, 10, "10 times in a row", "10 veces seguidas")]
    [InlineData(DoseKind.DistanceM, 4, "4 m", "4 m")]
    [InlineData(DoseKind.HeightM, 0.35, "35 cm high", "35 cm de alto")]
    [InlineData(DoseKind.TargetSizeM, 1.2, "target 1.2 m wide", "blanco de 1,2 m de ancho")]
    public void Of_Dose_IsSaidInTheLanguage(DoseKind kind, decimal amount, string english, string spanish)
    {
        var record = PaperLessons.Of(1, PaperLessons.Task(500, "Task", "", ["Cue"], "", ("One way", new Dose(kind, amount), [])));
        Assert.Contains(english, PaperLessons.Pages(record, A4)[0].Words());
        Assert.Contains(spanish, PaperLessons.Pages(record, Hoja)[0].Words());
    }

    [Fact]
    public void Of_NoFrozenSheet_Throws() =>
        Assert.Throws<ArgumentException>(() => PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot) with { Sheet = null }, A4));

    [Theory]
    [InlineData(-1)]
    [InlineData(61)]
    public void Of_SpareCountOutOfRange_Throws(int count) => Assert.Throws<ArgumentOutOfRangeException>(
        () => PaperLessons.Pages(PaperLessons.Of(1, PaperLessons.OneFoot), A4 with { SpareCount = count }));

    [Fact]
    public void Of_NoPupils_IsEmpty() => Assert.Empty(PaperLessons.Pages(PaperLessons.Of(0, PaperLessons.OneFoot), A4));

    [Fact]
    public void Of_SmallSheet_MatchesApproved() => Snapshot.Match(PaperLessons.Pages(
        PaperLessons.Of(1, new SheetContent { Title = "Balance", Tasks = [PaperLessons.OneFoot], SetCount = 2, TrialCount = 3 }), A4)[0].Listing());

    [Fact]
    public void Of_SmallSheetInSpanish_MatchesApproved() => Snapshot.Match(PaperLessons.Pages(
        PaperLessons.Of(1, new SheetContent { Title = "Balance", Tasks = [PaperLessons.Tripod], SetCount = 1, TrialCount = 2 }), Hoja)[0].Listing());

    private static List<string> LevelKeys(PrintedPage page) =>
        [.. page.Forms.SelectMany(f => f.Layout.Fields).Select(f => f.Key).Where(k => k.StartsWith("Level-", StringComparison.Ordinal))];

    // What stands in a disc: the levels' numbers on their cards.
    private static List<string> Numbers(Scene page) =>
    [
        .. from disc in page.Shapes.OfType<Disc>()
           from text in page.Shapes.OfType<Text>()
           where text.Anchor == TextAnchor.Middle && Math.Abs(text.XMm - disc.XMm) < 0.01 && Math.Abs(text.BaselineMm - disc.YMm) < disc.RadiusMm
           select text.Content,
    ];
}
