using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>
/// What a child sees first: the task's name, large, and what to set out to do; how this child does it, as if it had always been part of the task; then the caution, if there is one.
/// </summary>
internal sealed class TaskHead(SheetContent content, SheetTask task, int number, string adaptation, PageFrame frame, PaperWords words)
{
    private const double SignMm = 5;

    public IEnumerable<Block> Blocks()
    {
        var above = string.Join(" · ", new[]
        {
            content.Title == task.Name ? "" : content.Title,
            content.Tasks.Count > 1 ? words.Of("TaskOf", number, content.Tasks.Count) : "",
        }.Where(s => !string.IsNullOrWhiteSpace(s)));
        foreach (var line in Lines(above, frame.Type.SmallPt, Tone.Muted, TextWeight.Regular, 0)) yield return line;

        var isLong = frame.Type.Lines(task.Name, frame.RoomMm, frame.Type.TitlePt, TextWeight.Bold).Count > 1;
        foreach (var line in Lines(task.Name, isLong ? frame.Type.LongTitlePt : frame.Type.TitlePt, Tone.Ink, TextWeight.Bold, 0.5)) yield return line;
        foreach (var line in Lines(task.Purpose, frame.Type.LeadPt, Tone.Ink, TextWeight.Regular, 1)) yield return line;
        foreach (var line in Lines(adaptation, frame.Type.LeadPt, Tone.Ink, TextWeight.Regular, 1)) yield return line;
        foreach (var line in Caution()) yield return line;
    }

    private IEnumerable<Block> Lines(string text, double sizePt, Tone tone, TextWeight weight, double gapMm) =>
        frame.Type.Lines(text, frame.RoomMm, sizePt, weight).Select((line, i) => new Block(
            frame.Type.LineMm(sizePt),
            (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, [line], sizePt, tone, weight))
        {
            GapMm = i == 0 ? gapMm : 0,
            StaysWithNext = true,
        });

    private IEnumerable<Block> Caution() =>
        frame.Type.Lines(task.Caution, frame.RoomMm - SignMm - 2.5, frame.Type.BodyPt, TextWeight.Bold).Select((line, i) => new Block(
            frame.Type.LineMm(frame.Type.BodyPt),
            (sketch, top, _) =>
            {
                if (i == 0) Sign(sketch, top);
                sketch.Paragraph(frame.LeftMm + SignMm + 2.5, top, [line], frame.Type.BodyPt, Tone.Caution, TextWeight.Bold);
            })
        {
            GapMm = i == 0 ? 2.5 : 0,
            StaysWithNext = true,
        });

    // A triangle with a mark of exclamation, drawn.
    private void Sign(Sketch sketch, double topMm)
    {
        var (left, middle, right) = (frame.LeftMm, frame.LeftMm + SignMm / 2, frame.LeftMm + SignMm);
        var (top, bottom) = (topMm + 0.3, topMm + 4.7);
        sketch.Add(new Pen().MoveTo(middle, top).LineTo(right, bottom).LineTo(left, bottom).Close().Stroke(0.5, Tone.Caution));
        sketch.Add(new Line(middle, top + 1.5, middle, top + 2.9, 0.55, Tone.Caution));
        sketch.Add(new Disc(middle, top + 3.6, 0.32, Tone.Caution));
    }
}
