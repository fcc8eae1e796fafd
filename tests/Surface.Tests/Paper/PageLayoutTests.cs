using System.Globalization;
using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>Whatever a teacher writes, within what a sheet may hold: nothing leaves the page, touches other words or goes missing.</summary>
public class PageLayoutTests
{
    // What a desk printer cannot reach is at most about 6 mm; our margin is 15.
    private const double MarginMm = 15;
    private const double SlackMm = 0.05;

    private static readonly Gen<string> Word = Gen.OneOf(
        AnyOf("a", "still", "ÁÉÑ", "gjpqy", "balance", "Wide", "hands", "on", "equilibrio", "feet,"),
        Gen.Char["abcdefghijklmnopqrstuvwxyzÅÉÑgjyçŁő"].Array[1, 30].Select(c => new string(c)));

    private static Gen<string> AnyOf(params string[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static Gen<string> Words(int mostLength, int mostCount) =>
        Word.Array[1, mostCount].Select(w => string.Join(' ', w)).Select(s => (s.Length > mostLength ? s[..mostLength] : s).Trim()).Where(s => s.Length > 0);

    private static readonly Gen<Dose> AnyDose =
        Gen.Select(Gen.Enum<DoseKind>(), Gen.Int[1, 60000], (kind, hundredths) => new Dose(kind, hundredths / 100m));

    private static readonly Gen<Level> AnyLevel = Gen.Select(Gen.Guid, Words(80, 14), AnyDose, Gen.Enum<BodyDemand>().List[0, 1], (id, name, dose, demands) =>
        new Level { Id = id, Name = name, Dose = dose, Demands = demands });

    private static readonly Gen<SheetTask> AnyTask = Gen.Select(
        Words(80, 12), Gen.OneOf(Gen.Const(""), Words(200, 30)), Words(160, 25).List[1, 5], Gen.OneOf(Gen.Const(""), Words(300, 40)), AnyLevel.List[1, 6],
        (name, purpose, cues, caution, levels) => new SheetTask
        {
            TaskId = Guid.Empty, Name = name, Purpose = purpose, Cues = cues, Caution = caution, Levels = levels,
        });

    private static readonly Gen<SheetContent> AnyContent = Gen.Select(
        Words(80, 10), AnyTask.List[1, 3], Gen.Int[1, 4], Gen.Int[1, 10], Gen.Enum<PredictionKind>(),
        (title, tasks, sets, trials, predicts) =>
            new SheetContent { Title = title, Tasks = tasks, SetCount = sets, TrialCount = trials, Predicts = predicts });

    internal static readonly Gen<(LessonRecord Record, PaperOptions Options)> AnyLesson = Gen.Select(
        AnyContent, Words(60, 6), Words(60, 6), Words(80, 8), Gen.Enum<PaperSize>(), AnyOf("en", "es"), Gen.Enum<BodyDemand>(),
        (content, pupil, className, lesson, size, language, without) =>
        {
            var record = PaperLessons.Of(3, content);
            record = record with
            {
                Class = record.Class with { Name = className },
                Lesson = record.Lesson with { Title = lesson },
                Pupils = [.. record.Pupils.SkipLast(1), PaperLessons.Pupil(7, pupil)],
            };
            return (record.WithRestriction(record.Pupils[0], without), new PaperOptions(size, CultureInfo.GetCultureInfo(language)));
        });

    [Fact]
    public void Of_AnyTaskSheet_KeepsItsWordsApartAndOnThePage() => AnyLesson.Sample(lesson =>
    {
        foreach (var page in TaskSheetPages.Of(lesson.Record, lesson.Options with { SpareCount = 1 })) AssertTidy(Words(page));
    }, iter: 60);

    [Fact]
    public void Of_AnyTaskSheetInAnyWay_KeepsItsWordsApartAndOnThePage() => Gen.Select(AnyLesson, Gen.Bool, Gen.Bool, Gen.Bool).Sample((lesson, isLarge, isWide, hasSigns) =>
    {
        var options = lesson.Options with { SpareCount = 1, IsLargePrint = isLarge, HasWideSpacing = isWide, HasSigns = hasSigns };
        foreach (var page in TaskSheetPages.Of(lesson.Record with { Pupils = [.. lesson.Record.Pupils.Take(1)] }, options)) AssertTidy(Words(page));
    }, iter: 60);

    [Fact]
    public void Of_AnyObservationSheet_KeepsItsWordsApartAndOnThePage() => AnyLesson.Sample(lesson =>
    {
        foreach (var page in ObservationPages.Of(lesson.Record, lesson.Options)) AssertTidy(Words(page));
    }, iter: 40);

    // Without what makes the page a form: that stands in the margin on purpose.
    private static Scene Words(PrintedPage page)
    {
        var layout = page.Forms[0].Layout;
        bool IsAnchor(Shape shape) => shape is Box b && layout.Anchors.Any(a => Math.Abs(b.XMm + b.WidthMm / 2 - a.XMm) < 0.01 && Math.Abs(b.YMm + b.HeightMm / 2 - a.YMm) < 0.01);
        return page.Scene with { Shapes = [.. page.Scene.Shapes.Where(s => !IsAnchor(s))] };
    }

    [Fact]
    public void Of_AnyClassSheet_KeepsItsWordsApartAndOnThePage() => AnyLesson.Sample(lesson =>
    {
        foreach (var page in ClassSheetPages.Of(lesson.Record, lesson.Options)) AssertTidy(page);
    }, iter: 60);

    [Fact]
    public void Of_AnyTaskSheet_SaysAllTheTeacherWrote() => AnyLesson.Sample(lesson =>
    {
        var content = lesson.Record.Sheet!.Content;
        var run = string.Concat(PaperLessons.Pages(lesson.Record with { Pupils = [] }, lesson.Options with { SpareCount = 1 }).Select(PageText.Run));
        foreach (var task in content.Tasks)
        {
            var offered = task.Levels.Where(l => Offer.LevelsFor([l], lesson.Record.School.Policy, [], lesson.Record.Lesson.Date).Count > 0);
            foreach (var words in (string[])[task.Name, task.Purpose, task.Caution, .. task.Cues, .. offered.Select(l => l.Name)])
                Assert.Contains(words.Replace(" ", ""), run);
        }
    }, iter: 40);

    private static void AssertTidy(Scene page)
    {
        var texts = page.Shapes.OfType<Text>().Select(t => (Text: t, Room: t.Room())).ToList();
        foreach (var (text, room) in texts)
        {
            Assert.True(text.SizePt >= 11, $"'{text.Content}' is {text.SizePt} pt.");
            Assert.True(
                room.Left >= MarginMm - SlackMm && room.Right <= page.WidthMm - MarginMm + SlackMm
                && room.Top >= MarginMm - SlackMm && room.Bottom <= page.HeightMm - MarginMm + SlackMm,
                $"'{text.Content}' leaves the page: {room}.");
        }
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count; j++)
            {
                var (a, b) = (texts[i].Room, texts[j].Room);
                Assert.False(
                    a.Left < b.Right - SlackMm && b.Left < a.Right - SlackMm && a.Top < b.Bottom - SlackMm && b.Top < a.Bottom - SlackMm,
                    $"'{texts[i].Text.Content}' and '{texts[j].Text.Content}' overlap: {a}, {b}.");
            }
        }
        foreach (var box in page.Shapes.OfType<Box>())
        {
            Assert.True(box.XMm >= MarginMm - SlackMm && box.XMm + box.WidthMm <= page.WidthMm - MarginMm + SlackMm, $"{box} leaves the page.");
            Assert.True(box.YMm >= MarginMm - SlackMm && box.YMm + box.HeightMm <= page.HeightMm - MarginMm + SlackMm, $"{box} leaves the page.");
            foreach (var (text, room) in texts)
            {
                var isInside = room.Left >= box.XMm - SlackMm && room.Right <= box.XMm + box.WidthMm + SlackMm
                    && room.Top >= box.YMm - SlackMm && room.Bottom <= box.YMm + box.HeightMm + SlackMm;
                var isApart = room.Right <= box.XMm + SlackMm || room.Left >= box.XMm + box.WidthMm - SlackMm
                    || room.Bottom <= box.YMm + SlackMm || room.Top >= box.YMm + box.HeightMm - SlackMm;
                Assert.True(isInside || isApart, $"'{text.Content}' at {room} crosses {box}.");
            }
        }
    }
}
