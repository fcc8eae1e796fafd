using Slantwise.Engines.Drawing;
using Slantwise.Paper.Cards;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Posters;

/// <summary>Wall posters: a task each, to be read across the hall, and one with the way of a set in four drawn steps.</summary>
public static class PosterPages
{
    private const double BorderMm = 12;

    /// <summary>The posters' pages, in the order of the sheet's tasks; the way of a set is last.</summary>
    /// <param name="record">The lesson, with its frozen sheet. Levels that the policy rules out are not on a poster.</param>
    /// <param name="options">Paper, language, and how large the posters are.</param>
    /// <returns>A page a poster; two, the left one first, where each is hung from two. Levels stand without numbers: pupils' own sheets may count other levels.</returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    public static IReadOnlyList<Scene> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("Posters are printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var posters = sheet.Content.Tasks.Select(task => Task(CardContent.Of(task, record), options))
            .Append(Way(options, sheet.Content))
            .Select(scene => options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene);
        return [.. posters.SelectMany(scene => options.PosterSize == PosterSize.TwoPages ? Halves(scene) : [scene])];
    }

    // A page lying, or two standing side by side.
    private static Area Sheet(PaperOptions options)
    {
        var paper = PageFrame.Of(options.Size);
        return options.PosterSize == PosterSize.OnePage ? new Area(0, 0, paper.HeightMm, paper.WidthMm) : new Area(0, 0, paper.WidthMm * 2, paper.HeightMm);
    }

    private static Scene Task(CardContent content, PaperOptions options)
    {
        var sheet = Sheet(options);
        var (words, cardWords, type) = (new PaperWords(options.Language), new CardWords(options.Language), CardScale.TypeOf(options));
        var sketch = new Sketch(type);
        if (options.PosterSize == PosterSize.OnePage)
        {
            Fill(content, sheet.Inside(BorderMm));
        }
        else
        {
            var (left, right) = (sheet with { WidthMm = sheet.WidthMm / 2 }, sheet with { LeftMm = sheet.WidthMm / 2, WidthMm = sheet.WidthMm / 2 });
            Fill(content with { Caution = "", Cues = [] }, left.Inside(BorderMm));
            Fill(new CardContent(words["CuesHead"], "", content.Caution, null, content.Cues), right.Inside(BorderMm));
        }
        return new Scene(sheet.WidthMm, sheet.HeightMm, sketch.Shapes, cardWords.Of("PosterDescription", content.Title));

        void Fill(CardContent part, Area area)
        {
            new TaskCard(part, area, words, type, CardScale.Poster).DrawOn(sketch);
        }
    }

    private static Scene Way(PaperOptions options, SheetContent content)
    {
        var sheet = Sheet(options);
        var (words, type) = (new CardWords(options.Language), CardScale.TypeOf(options));
        var sketch = new Sketch(type);
        var guess = content.Predicts switch
        {
            PredictionKind.SuccessCount => words.Of("GuessCount", content.TrialCount),
            PredictionKind.HoldS => words["GuessSeconds"],
            _ => "",
        };
        new SetSteps(words, new PaperWords(options.Language), type, guess).DrawOn(sketch, sheet, BorderMm);
        return new Scene(sheet.WidthMm, sheet.HeightMm, sketch.Shapes, words["WayDescription"]);
    }

    // No shape of a double poster stands across its middle.
    private static IEnumerable<Scene> Halves(Scene scene)
    {
        var half = scene.WidthMm / 2;
        var left = scene.Shapes.Where(s => ShapeLeft.Of(s) < half).ToList();
        var right = scene.Shapes.Where(s => ShapeLeft.Of(s) >= half).Select(s => ShapeMove.By(s, -half, 0)).ToList();
        // The ground of cream paper is one shape for both.
        if (left.FirstOrDefault() is Box { Tone: Tone.Cream, StrokeMm: 0 } ground)
        {
            left[0] = ground with { WidthMm = half };
            right.Insert(0, left[0]);
        }
        yield return scene with { WidthMm = half, Shapes = left };
        yield return scene with { WidthMm = half, Shapes = right };
    }
}
