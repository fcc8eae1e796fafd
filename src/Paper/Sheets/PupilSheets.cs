using Slantwise.Engines.Drawing;
using Slantwise.Paper.Forms;
using Slantwise.Paper.Layout;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Makes the pages of one lesson's sheets, a pupil at a time.</summary>
internal sealed class PupilSheets(LessonRecord record, SheetContent content, SheetStyle style)
{
    private const double UnderHeaderMm = 5;

    private readonly FormCoder _coder = new(record);

    /// <summary>One pupil's pages.</summary>
    public IReadOnlyList<PrintedPage> Of(Pupil pupil) => Pages(pupil, SheetCode.TagOf(pupil.Id));

    /// <summary>The pages of a sheet without a name.</summary>
    /// <param name="number">Its number among those printed for the lesson, from 1.</param>
    public IReadOnlyList<PrintedPage> Spare(int number) => Pages(null, number);

    private List<PrintedPage> Pages(Pupil? pupil, long tag)
    {
        var tasks = content.Tasks.Select((task, i) => (Task: task, Blocks: Blocks(task, i + 1, OfferedLevel.Of(task, record, pupil)))).ToList();
        var number = pupil is null ? (int)tag : 0;
        // A sheet of one page says nothing about pages; whether it is one shows when it is laid out without that line.
        var header = new SheetHeader(record, pupil, number, style.Frame, style.Words, isPaged: tasks.Count > 1);
        var pages = LaidOut(tasks, header);
        if (pages.Count > tasks.Count)
        {
            header = new SheetHeader(record, pupil, number, style.Frame, style.Words, isPaged: true);
            pages = LaidOut(tasks, header);
        }
        return [.. pages.Select((page, i) =>
        {
            var sketch = new Sketch(style.Type);
            header.DrawOn(sketch, i + 1, pages.Count);
            foreach (var block in page.Blocks) block.DrawOn(sketch);
            var description = pupil is null
                ? style.Words.Of("SpareDescription", page.Task.Name, i + 1, pages.Count)
                : style.Words.Of("SheetDescription", Labels.Of(pupil), page.Task.Name, i + 1, pages.Count);
            return _coder.Of(style.Frame, sketch, tag, pupil is not null, i + 1, description);
        })];
    }

    private List<(SheetTask Task, IReadOnlyList<Placed> Blocks)> LaidOut(List<(SheetTask Task, IReadOnlyList<Block> Blocks)> tasks, SheetHeader header)
    {
        var top = style.Frame.TopMm + header.HeightMm + UnderHeaderMm;
        return [.. tasks.SelectMany(t => Column
            .EvenPages(t.Blocks, Again(t.Task), top, style.Frame.BottomMm, FormFrame.FootMm(style.Frame))
            .Select(page => (t.Task, page)))];
    }

    // A later page of a task says which it goes on with.
    private Block Again(SheetTask task)
    {
        var (frame, type) = (style.Frame, style.Type);
        var lines = type.Lines(task.Name, frame.RoomMm, type.LeadPt, TextWeight.Bold);
        return new Block(
            lines.Count * type.LineMm(type.LeadPt),
            (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, lines, type.LeadPt, weight: TextWeight.Bold));
    }

    private IReadOnlyList<Block> Blocks(SheetTask task, int number, IReadOnlyList<OfferedLevel> offered) =>
    [
        .. new TaskHead(content, task, number, style.Frame, style.Words).Blocks(),
        .. new LevelCards(offered, style.Frame, style.Words).Blocks(),
        .. new CueList(task.Cues, style.Frame, style.Words).Blocks(),
        .. new SetRows(content, task, number, offered, style).Blocks(),
        OwnWords.Block(style, number),
    ];
}
