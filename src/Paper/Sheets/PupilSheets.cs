using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Makes the pages of one lesson's sheets, a pupil at a time.</summary>
internal sealed class PupilSheets(LessonRecord record, SheetContent content, PageFrame frame, PaperWords words)
{
    private const double UnderHeaderMm = 5;

    /// <summary>One pupil's pages, or those of a sheet without a name.</summary>
    public IReadOnlyList<Scene> Of(Pupil? pupil)
    {
        var tasks = content.Tasks.Select((task, i) => (Task: task, Blocks: Blocks(task, i + 1, OfferedLevel.Of(task, record, pupil)))).ToList();
        // A sheet of one page says nothing about pages; whether it is one shows when it is laid out without that line.
        var pages = LaidOut(tasks, new SheetHeader(record, pupil, frame, words, isPaged: tasks.Count > 1), pupil);
        return pages.Count == tasks.Count ? pages : LaidOut(tasks, new SheetHeader(record, pupil, frame, words, isPaged: true), pupil);
    }

    private List<Scene> LaidOut(List<(SheetTask Task, IReadOnlyList<Block> Blocks)> tasks, SheetHeader header, Pupil? pupil)
    {
        var top = frame.TopMm + header.HeightMm + UnderHeaderMm;
        var pages = tasks.SelectMany(t => Fewest(t.Blocks, Again(t.Task), top).Select(page => (t.Task, Blocks: page))).ToList();
        return [.. pages.Select((page, i) =>
        {
            var sketch = new Sketch();
            header.DrawOn(sketch, i + 1, pages.Count);
            foreach (var block in page.Blocks) block.DrawOn(sketch);
            return new Scene(frame.WidthMm, frame.HeightMm, sketch.Shapes, pupil is null
                ? words.Of("SpareDescription", page.Task.Name, i + 1, pages.Count)
                : words.Of("SheetDescription", Labels.Of(pupil), page.Task.Name, i + 1, pages.Count));
        })];
    }

    // A later page of a task says which it goes on with.
    private Block Again(SheetTask task)
    {
        var lines = TextMeasure.Lines(task.Name, frame.RoomMm, TypeScale.LeadPt, TextWeight.Bold);
        return new Block(
            lines.Count * TypeScale.LineMm(TypeScale.LeadPt),
            (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, lines, TypeScale.LeadPt, weight: TextWeight.Bold));
    }

    private IReadOnlyList<Block> Blocks(SheetTask task, int number, IReadOnlyList<OfferedLevel> offered) =>
    [
        .. new TaskHead(content, task, number, frame, words).Blocks(),
        .. new LevelCards(offered, frame, words).Blocks(),
        .. new CueList(task.Cues, frame, words).Blocks(),
        .. new SetRows(content, task, offered, frame, words).Blocks(),
    ];

    // Two lines for the pupil's own words, or one where that saves a page.
    private IReadOnlyList<IReadOnlyList<Placed>> Fewest(IReadOnlyList<Block> blocks, Block later, double topMm)
    {
        var roomy = Column.EvenPages([.. blocks, OwnWords.Block(2, frame, words)], later, topMm, frame.BottomMm);
        if (roomy.Count == 1) return roomy;
        var close = Column.EvenPages([.. blocks, OwnWords.Block(1, frame, words)], later, topMm, frame.BottomMm);
        return close.Count < roomy.Count ? close : roomy;
    }
}
