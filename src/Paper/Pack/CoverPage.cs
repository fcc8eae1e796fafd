using Slantwise.Engines.Drawing;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.Pack;

/// <summary>The note on top of a pack, for somebody who has not taught such a lesson: one page.</summary>
internal sealed class CoverPage(LessonRecord record, PaperOptions options)
{
    private const double TitlePt = 22;
    private static readonly string[] Steps = ["CoverStart", "CoverShow", "CoverSets", "CoverRound", "CoverEnd"];
    private static readonly string[] Said = ["SayWhich", "SayHow", "SayWhere", "SaySeen"];
    private static readonly string[] Unsaid = ["UnsaidGood", "UnsaidUp", "UnsaidWrong", "UnsaidCompare"];
    private static readonly string[] Safety = ["CoverStop", "CoverOwnSheet", "CoverNoReason", "CoverCautions"];
    private static readonly string[] After = ["AfterCollect", "AfterNames", "AfterPlace", "AfterNote"];

    /// <summary>The page.</summary>
    /// <param name="parts">What the pack holds, each with its first page.</param>
    public Scene Of(IReadOnlyList<(string Name, int FirstPage)> parts)
    {
        var frame = PageFrame.Of(options.Size) with { Type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false }) };
        var words = new CardWords(options.Language);
        var head = new ClassHead(record, frame, new PaperWords(options.Language), isPaged: false);
        // Small type where larger would need a second page: this note is one page.
        var pages = new[] { frame.Type.BodyPt, frame.Type.SmallPt }
            .Select(size => Column.Pages(Blocks(frame, words, parts, size), new Block(0, (_, _, _) => { }), frame.TopMm + head.HeightMm, frame.BottomMm))
            .Aggregate((a, b) => a.Count == 1 ? a : b);
        var sketch = new Sketch(frame.Type);
        head.DrawOn(sketch, 1, 1);
        foreach (var block in pages[0]) block.DrawOn(sketch);
        return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, words.Of("CoverDescription", record.Class.Name));
    }

    private static IReadOnlyList<Block> Blocks(PageFrame frame, CardWords words, IReadOnlyList<(string Name, int FirstPage)> parts, double sizePt)
    {
        var columns = new PageColumns(frame, sizePt);
        var right = frame.LeftMm + columns.HalfMm + PageColumns.GutterMm;
        IReadOnlyList<PageLine> Items(string heading, string[] keys, double width, bool isNumbered = false) =>
        [
            columns.Heading(words[heading]),
            .. keys.SelectMany((key, i) => columns.Lines(words[key], width, isNumbered ? $"{i + 1}" : "–")),
        ];
        IReadOnlyList<PageLine> contents = [columns.Heading(words["CoverHolds"]), .. parts.SelectMany(p => columns.Lines(words.Of("PartFrom", p.Name, p.FirstPage), frame.RoomMm, "–"))];
        var titles = frame.Type.Lines(words["CoverTitle"], frame.RoomMm, TitlePt, TextWeight.Bold);
        return
        [
            new Block(titles.Count * frame.Type.LineMm(TitlePt), (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, titles, TitlePt, weight: TextWeight.Bold)),
            columns.Block(2, (frame.LeftMm, [.. columns.Lines(words["CoverWhat"], frame.RoomMm)])),
            columns.Block(4, (frame.LeftMm, Items("CoverRuns", Steps, frame.RoomMm, isNumbered: true))),
            columns.Block(4, (frame.LeftMm, Items("SayHead", Said, columns.HalfMm)), (right, Items("UnsaidHead", Unsaid, columns.HalfMm))),
            columns.Block(4, (frame.LeftMm, Items("CoverSafety", Safety, frame.RoomMm))),
            columns.Block(4, (frame.LeftMm, Items("CoverAfter", After, frame.RoomMm))),
            columns.Block(4, (frame.LeftMm, contents)),
        ];
    }
}
