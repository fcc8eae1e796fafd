using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.RiskPages;

/// <summary>A lesson's risk page to look through with a pen and to sign by hand.</summary>
public static class RiskPagePages
{
    private const double AfterHeadMm = 1.5;

    /// <summary>The pages: one where it has room, more where there is more to say.</summary>
    /// <param name="page">The risk page, in the language to print it in.</param>
    /// <param name="options">The paper, wider spacing, and whether it is tinted.</param>
    /// <returns>Nothing is cut or left out. Class, day, lesson and title are on every page; the lines to sign are on the last.</returns>
    public static IReadOnlyList<Scene> Of(RiskPage page, PaperOptions options)
    {
        var frame = PageFrame.Of(options.Size) with { Type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false }) };
        var words = new PaperWords(page.Culture);
        var blocks = new RiskBlocks(page, frame).All();
        List<Scene> LaidOut(ClassHead head)
        {
            var pages = Column.Pages(blocks, Again(page, frame), frame.TopMm + head.HeightMm, frame.BottomMm);
            return [.. pages.Select((placed, i) =>
            {
                var sketch = new Sketch(frame.Type);
                head.DrawOn(sketch, i + 1, pages.Count);
                foreach (var block in placed) block.DrawOn(sketch);
                var description = page.Say("Description", page.Record.Class.Name, words.Date(page.Record.Lesson.Date), i + 1, pages.Count);
                return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, description);
            })];
        }

        var scenes = LaidOut(new ClassHead(page.Record, frame, words, isPaged: false));
        if (scenes.Count > 1) scenes = LaidOut(new ClassHead(page.Record, frame, words, isPaged: true));
        return options.IsCream ? [.. scenes.Select(s => Cream.Of(new PrintedPage(s, [])).Scene)] : scenes;
    }

    // The heading that every page but the first begins with.
    private static Block Again(RiskPage page, PageFrame frame) => new(
        frame.Type.LineMm(frame.Type.BodyPt) + AfterHeadMm,
        (sketch, top, _) => sketch.Words(frame.LeftMm, top + TypeScale.AscentMm(frame.Type.BodyPt), page.Say("Title"), frame.Type.BodyPt, weight: TextWeight.Bold));
}
