using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper;

/// <summary>The teacher's list of a lesson: who chose what, whom to visit, and what the sheet asks.</summary>
public static class ClassSheetPages
{
    /// <summary>The list's pages: one for a class on a usual sheet, more where there is more to say.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="options">Paper and language; spare sheets are passed over.</param>
    /// <returns>
    /// Pupils by label in the language's own order, then by code. Where a policy or a restriction leaves a pupil other levels than the class,
    /// their numbers stand beside the name; never a reason.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    public static IReadOnlyList<Scene> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("A class list is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var frame = PageFrame.Of(options.Size);
        var words = new PaperWords(options.Language);
        IReadOnlyList<Block> blocks =
        [
            .. new ClassRows(record, sheet.Content, frame, words).Blocks(Labels.InOrder(record.Pupils, options.Language)),
            .. sheet.Content.Tasks.SelectMany((task, i) => new ClassSummary(task, i + 1, sheet.Content.Tasks.Count, OfferedLevel.Of(task, record, null), frame, words).Blocks()),
        ];
        List<Scene> LaidOut(ClassHead head)
        {
            var pages = Column.Pages(blocks, new Block(0, (_, _, _) => { }), frame.TopMm + head.HeightMm, frame.BottomMm);
            return [.. pages.Select((page, i) =>
            {
                var sketch = new Sketch(frame.Type);
                head.DrawOn(sketch, i + 1, pages.Count);
                foreach (var block in page) block.DrawOn(sketch);
                return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, words.Of("ClassDescription", record.Class.Name, i + 1, pages.Count));
            })];
        }

        var one = LaidOut(new ClassHead(record, frame, words, isPaged: false));
        return one.Count == 1 ? one : LaidOut(new ClassHead(record, frame, words, isPaged: true));
    }
}
