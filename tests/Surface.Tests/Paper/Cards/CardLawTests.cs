using CsCheck;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Posters;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Paper.Cards;

/// <summary>Whatever a teacher writes, within what a sheet may hold: cards, posters and the lesson page stay tidy, and lose no word that matters.</summary>
public class CardLawTests
{
    [Fact]
    public void Of_AnyStationCards_KeepTheirWordsApartAndAll() => PageLayoutTests.AnyLesson.Sample(lesson =>
    {
        var pages = StationCardPages.Of(lesson.Record, lesson.Options);
        foreach (var page in pages) Tidy.Check(page);
        var run = string.Concat(pages.Select(PageText.Run));
        foreach (var task in lesson.Record.Sheet!.Content.Tasks)
        {
            var offered = Offer.LevelsFor(task.Levels, lesson.Record.School.Policy, [], lesson.Record.Lesson.Date);
            foreach (var words in (string[])[task.Name, task.Purpose, task.Caution, .. task.Cues, .. offered.Select(l => l.Name)]) Assert.Contains(words.Replace(" ", ""), run);
        }
    }, iter: 25);

    [Fact]
    public void Of_AnyPosters_KeepTheirWordsApart() => Gen.Select(PageLayoutTests.AnyLesson, Gen.Enum<PosterSize>()).Sample((lesson, size) =>
    {
        foreach (var page in PosterPages.Of(lesson.Record, lesson.Options with { PosterSize = size }).SkipLast(2)) Tidy.Check(page);
    }, iter: 15);

    [Fact]
    public void Of_AnyCueCards_KeepTheirWordsApart() => PageLayoutTests.AnyLesson.Sample(lesson =>
    {
        foreach (var page in CueCardPages.Of(lesson.Record, lesson.Options)) Tidy.Check(page);
    }, iter: 25);

    [Fact]
    public void Of_AnyLessonPage_IsTidyAndHasItsCautions() => PageLayoutTests.AnyLesson.Sample(lesson =>
    {
        var pages = LessonPage.Of(lesson.Record, LessonPlans.None, lesson.Options);
        foreach (var page in pages) Tidy.Check(page);
        var run = string.Concat(pages.Select(PageText.Run));
        Assert.All(lesson.Record.Sheet!.Content.Tasks, t => Assert.Contains(t.Caution.Replace(" ", ""), run));
    }, iter: 25);
}
