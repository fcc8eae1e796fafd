using Slantwise.Engines.Drawing;
using Slantwise.Paper.Forms;
using Slantwise.Paper.Layout;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>One pupil's sheet, or one without a name, laid out on pages.</summary>
internal sealed class PupilSheet
{
    private const double UnderHeaderMm = 5;

    private readonly SheetContent _content;
    private readonly SheetStyle _style;
    private readonly Pupil? _pupil;
    private readonly SheetHeader _header;
    private readonly List<(SheetTask Task, IReadOnlyList<Placed> Blocks)> _pages;

    public PupilSheet(LessonRecord record, SheetContent content, SheetStyle style, Pupil? pupil, int spareNumber)
    {
        (_content, _style, _pupil) = (content, style, pupil);
        var tasks = content.Tasks.Select((task, i) => (Task: task, Blocks: Blocks(task, i + 1, OfferedLevel.Of(task, record, pupil), pupil is null ? "" : record.AdaptationFor(pupil.Id, task.TaskId)))).ToList();
        // A sheet of one page says nothing about pages; whether it is one shows when it is laid out without that line.
        _header = new SheetHeader(record, pupil, spareNumber, style, isPaged: tasks.Count > 1);
        _pages = LaidOut(tasks, _header);
        if (_pages.Count == tasks.Count) return;
        _header = new SheetHeader(record, pupil, spareNumber, style, isPaged: true);
        _pages = LaidOut(tasks, _header);
    }

    public int PageCount => _pages.Count;

    public IEnumerable<(Sketch Sketch, string Description)> Pages() => _pages.Select((page, i) =>
    {
        var sketch = new Sketch(_style.Type);
        _header.DrawOn(sketch, i + 1, _pages.Count);
        foreach (var block in page.Blocks) block.DrawOn(sketch);
        if (!page.Blocks[^1].Block.IsFoot) sketch.Words(_style.Frame.LeftMm, _style.Frame.BottomMm - 1, _style.Words.Of("GoOn", i + 2), _style.Type.SmallPt, Tone.Muted);
        return (sketch, _pupil is null
            ? _style.Words.Of("SpareDescription", page.Task.Name, i + 1, _pages.Count)
            : _style.Words.Of("SheetDescription", Labels.Of(_pupil), page.Task.Name, i + 1, _pages.Count));
    });

    private List<(SheetTask Task, IReadOnlyList<Placed> Blocks)> LaidOut(List<(SheetTask Task, IReadOnlyList<Block> Blocks)> tasks, SheetHeader header)
    {
        var top = _style.Frame.TopMm + header.HeightMm + UnderHeaderMm;
        return [.. tasks.SelectMany(t => Column
            .EvenPages(t.Blocks, Again(t.Task), top, _style.Frame.BottomMm, FormFrame.FootMm(_style.Frame))
            .Select(page => (t.Task, page)))];
    }

    // A later page of a task says which it goes on with.
    private Block Again(SheetTask task)
    {
        var (frame, type) = (_style.Frame, _style.Type);
        var lines = type.Lines(task.Name, frame.RoomMm, type.LeadPt, TextWeight.Bold);
        return new Block(
            lines.Count * type.LineMm(type.LeadPt),
            (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, lines, type.LeadPt, weight: TextWeight.Bold));
    }

    private IReadOnlyList<Block> Blocks(SheetTask task, int number, IReadOnlyList<OfferedLevel> offered, string adaptation) =>
    [
        .. new TaskHead(_content, task, number, adaptation, _style.Frame, _style.Words).Blocks(),
        .. new LevelCards(offered, _style).Blocks(),
        .. new CueList(task.Cues, _style).Blocks(),
        .. SetBlocks.Of(_content, task, number, offered, _style),
        OwnWords.Block(_style, number),
    ];
}
