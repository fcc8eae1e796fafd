using Slantwise.Engines.Drawing;
using Slantwise.Paper.Forms;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Lays the observation form's rows onto pages.</summary>
internal sealed class ObservationForm(LessonRecord record, SheetContent content, PageFrame frame, PaperWords words, IReadOnlyList<Pupil> pupils)
{
    private const double LegendGapMm = 6;

    private readonly FormCoder _coder = new(record);
    private readonly SheetStyle _style = new(frame, words) { FieldMm = 5, FieldGapMm = 1.6 };

    public IReadOnlyList<PrintedPage> Pages()
    {
        var head = new ClassHead(record, frame, words, isPaged: true);
        var pages = content.Tasks
            .Select((task, i) => (Task: task, Number: i + 1))
            .Where(t => t.Task.Cues.Count > 0)
            .SelectMany(t => PagesOf(t.Task, t.Number, frame.TopMm + head.HeightMm).Select(page => (t.Task, page.Blocks, page.Rows)))
            .ToList();
        return [.. pages.Select((page, i) =>
        {
            var sketch = new Sketch(frame.Type);
            head.DrawOn(sketch, i + 1, pages.Count);
            foreach (var block in page.Blocks) block.DrawOn(sketch);
            var description = words.Of("ObservationDescription", record.Class.Name, page.Task.Name, i + 1, pages.Count);
            return _coder.Of(frame, sketch, 0, isNamed: false, i + 1, description, [.. page.Rows.Select(p => SheetCode.TagOf(p.Id))]);
        })];
    }

    // Rows are numbered from 1 on each page. Every page is a form of its own and says all that its rows need.
    private IEnumerable<(IReadOnlyList<Placed> Blocks, IReadOnlyList<Pupil> Rows)> PagesOf(SheetTask task, int number, double topMm)
    {
        int FittingCount(IReadOnlyList<Pupil> rows) => Math.Max(1, Laid(task, number, rows, topMm).Count(p => p.Block.IsRow));
        // About as many on each page, not a full one and a remnant.
        var pageCount = 0;
        for (var placed = 0; placed < pupils.Count; pageCount++) placed += FittingCount([.. pupils.Skip(placed)]);
        foreach (var share in pupils.Chunk((pupils.Count + pageCount - 1) / pageCount))
        {
            for (var next = 0; next < share.Length;)
            {
                var rows = share[next..];
                rows = rows[..FittingCount(rows)];
                yield return (Laid(task, number, rows, topMm), rows);
                next += rows.Length;
            }
        }
    }

    private IReadOnlyList<Placed> Laid(SheetTask task, int number, IReadOnlyList<Pupil> rows, double topMm) =>
        Column.Pages(Blocks(task, number, rows), new Block(0, (_, _, _) => { }), topMm, frame.BottomMm)[0];

    private IReadOnlyList<Block> Blocks(SheetTask task, int number, IReadOnlyList<Pupil> rows) =>
    [
        .. Title(task),
        .. new CueList(task.Cues, _style, "LookFor").Blocks(),
        .. new ObservationRows(_style, number, task.Cues.Count, content.SetCount).Blocks(rows),
    ];

    private IEnumerable<Block> Title(SheetTask task)
    {
        var type = frame.Type;
        foreach (var (text, sizePt, tone, weight) in new[]
        {
            ($"{words["Observation"]}: {task.Name}", type.LeadPt, Tone.Ink, TextWeight.Bold),
            (words["ObservationHint"], type.SmallPt, Tone.Muted, TextWeight.Regular),
        })
        {
            foreach (var line in type.Lines(text, frame.RoomMm, sizePt, weight))
            {
                yield return new Block(type.LineMm(sizePt), (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, [line], sizePt, tone, weight))
                { StaysWithNext = true };
            }
        }
        yield return Legend();
    }

    // What the two signs over the fields say.
    private Block Legend()
    {
        var type = frame.Type;
        var size = Signs.SizeMm(type.SmallPt);
        return new Block(type.LineMm(type.SmallPt), (sketch, top, _) =>
        {
            var (left, baseline) = (frame.LeftMm, top + TypeScale.AscentMm(type.SmallPt));
            foreach (var (sign, word) in new[] { (Sign.Tick, words["Met"]), (Sign.Ring, words["NotMet"]) })
            {
                Signs.Draw(sketch, sign, left, baseline - TypeScale.HalfCapitalMm(type.SmallPt), size);
                sketch.Words(left + size + Signs.AfterMm(type.SmallPt), baseline, word, type.SmallPt);
                left += size + Signs.AfterMm(type.SmallPt) + type.WidthMm(word, type.SmallPt) + LegendGapMm;
            }
        })
        { GapMm = 1, StaysWithNext = true };
    }
}
