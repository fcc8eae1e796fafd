using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Snapshooter.Xunit3;

namespace Slantwise.Surface.Tests.Paper;

public class ClassSheetPagesTests
{
    private static readonly PaperOptions A4 = new(PaperSize.A4, CultureInfo.GetCultureInfo("en"));

    [Theory]
    [InlineData(PaperSize.A4, 30)]
    [InlineData(PaperSize.Letter, 26)]
    public void Of_ClassOnOneTask_IsOnePageWithEveryPupil(PaperSize size, int pupilCount)
    {
        var record = PaperLessons.Of(pupilCount, PaperLessons.OneFoot);
        var page = Assert.Single(ClassSheetPages.Of(record, A4 with { Size = size }));
        Assert.All(record.Pupils, p => Assert.Contains(p.Label.Replace(" ", ""), page.Run()));
        Assert.All(PaperLessons.OneFoot.Cues, cue => Assert.Contains(cue, page.Words()));
        // A box for each set and one for the visit, for each pupil.
        Assert.Equal(pupilCount * 4, page.Shapes.OfType<Box>().Count());
    }

    [Fact]
    public void Of_RestrictedPupil_ShowsWhichLevelsTheOwnNumbersAreAndNoReason()
    {
        var record = PaperLessons.Of(4, PaperLessons.Tripod);
        record = record.WithRestriction(record.Pupils[2], BodyDemand.Inversion);
        var page = Assert.Single(ClassSheetPages.Of(record, A4));
        Assert.Single(page.Words(), w => w == "1 2 3");
        Assert.Contains("Own 1, 2, 3", page.Words());
        Assert.DoesNotContain("nversion", page.Run());
    }

    [Fact]
    public void Of_NobodyRestricted_HasNoSuchColumn() =>
        Assert.DoesNotContain("Own 1, 2, 3", ClassSheetPages.Of(PaperLessons.Of(4, PaperLessons.Tripod), A4)[0].Words());

    [Fact]
    public void Of_ThreeTasks_NamesTheTaskBesideTheNumbers()
    {
        var record = PaperLessons.Of(30, new SheetContent { Title = "x", Tasks = [PaperLessons.Tripod, PaperLessons.Rope, PaperLessons.Throw], SetCount = 4 });
        record = record.WithRestriction(record.Pupils[0], BodyDemand.Impact);
        var pages = ClassSheetPages.Of(record, A4);
        Assert.Single(pages.SelectMany(p => p.Words()), w => w == "2: 2");
        Assert.Contains($"page 2 of {pages.Count}", pages[1].Words());
        Assert.Contains("Task 3: Throw to a target", pages.SelectMany(p => p.Words()));
    }

    [Fact]
    public void Of_PolicyForbids_LevelIsNotInTheSummary() =>
        Assert.DoesNotContain("Threepointswiththehead", ClassSheetPages.Of(PaperLessons.Of(2, PaperLessons.Tripod), A4)[0].Run());

    [Fact]
    public void Of_NoFrozenSheet_Throws() =>
        Assert.Throws<ArgumentException>(() => ClassSheetPages.Of(PaperLessons.Of(1, PaperLessons.OneFoot) with { Sheet = null }, A4));

    [Fact]
    public void Of_SmallClass_MatchesApproved()
    {
        var record = PaperLessons.Of(3, PaperLessons.Tripod);
        Snapshot.Match(ClassSheetPages.Of(record.WithRestriction(record.Pupils[1], BodyDemand.Inversion), A4)[0].Listing());
    }
}
