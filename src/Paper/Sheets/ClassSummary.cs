using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>A task of the sheet in brief, under the class list: levels with their doses on the left, cues on the right.</summary>
internal sealed class ClassSummary(
    SheetTask task, int number, int taskCount, IReadOnlyList<OfferedLevel> offered, PageFrame frame, PaperWords words)
{
    private const double NumberMm = 5.5;
    private const double GutterMm = 6;
    private const double LevelsFraction = 0.54;

    public IEnumerable<Block> Blocks()
    {
        var title = taskCount == 1 ? task.Name : words.Of("TaskTitled", number, task.Name);
        var lines = frame.Type.Lines(title, frame.RoomMm, frame.Type.BodyPt, TextWeight.Bold);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            yield return new Block(
                frame.Type.LineMm(frame.Type.BodyPt),
                (sketch, top, _) => sketch.Paragraph(frame.LeftMm, top, [line], frame.Type.BodyPt, weight: TextWeight.Bold))
            { GapMm = i == 0 ? 4 : 0, StaysWithNext = true };
        }
        var levelsMm = (frame.RoomMm - GutterMm) * LevelsFraction;
        var left = Items(words["Levels"], [.. offered.Select((l, i) => (i + 1, $"{l.Level.Name}, {words.Dose(l.Level.Dose)}"))], levelsMm);
        var right = Items(words["Cues"], [.. task.Cues.Select((cue, i) => (i + 1, cue))], frame.RoomMm - GutterMm - levelsMm);
        var step = frame.Type.LineMm(frame.Type.SmallPt);
        var count = Math.Max(left.Count, right.Count);
        for (var i = 0; i < count; i++)
        {
            var row = i;
            yield return new Block(step, (sketch, top, _) =>
            {
                Item(sketch, left, row, frame.LeftMm, top);
                Item(sketch, right, row, frame.LeftMm + levelsMm + GutterMm, top);
            })
            { GapMm = i == 0 ? 1 : 0, StaysWithNext = i < count - 1 };
        }
    }

    private List<(string Number, string Line)> Items(string heading, IReadOnlyList<(int Number, string Words)> items, double widthMm)
    {
        if (items.Count == 0) return [];
        return
        [
            ("", heading),
            .. items.SelectMany(item => frame.Type.Lines(item.Words, widthMm - NumberMm, frame.Type.SmallPt)
                .Select((line, at) => (at == 0 ? $"{item.Number}" : " ", line))),
        ];
    }

    private void Item(Sketch sketch, List<(string Number, string Line)> items, int row, double left, double top)
    {
        if (row >= items.Count) return;
        var (number, line) = items[row];
        var baseline = top + TypeScale.AscentMm(frame.Type.SmallPt);
        if (number.Length == 0)
        {
            sketch.Words(left, baseline, line, frame.Type.SmallPt, Tone.Muted);
            return;
        }
        sketch.Words(left, baseline, number.Trim(), frame.Type.SmallPt, weight: TextWeight.Bold);
        sketch.Words(left + NumberMm, baseline, line, frame.Type.SmallPt);
    }
}
