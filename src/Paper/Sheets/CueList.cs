using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>The cues, numbered; the same squares wait to be ticked in every set.</summary>
internal sealed class CueList(IReadOnlyList<string> cues, SheetStyle style, string heading = "CuesHead")
{
    private const double LeastSquareMm = 5.6;
    private const double AfterSquareMm = 2.4;
    private const double GutterMm = 6;

    private readonly PageFrame _frame = style.Frame;

    private double SquareMm => Math.Max(LeastSquareMm, _frame.Type.BodyPt * 0.46);

    public IEnumerable<Block> Blocks()
    {
        if (cues.Count == 0) yield break;
        yield return Headings.Block(style.Words[heading], "", _frame) with { GapMm = 3.4 };

        // Two beside one another while each is short enough to be read at a glance.
        var perRow = cues.Count > 1 && !style.IsStacked && cues.All(c => Lines(c, 2).Count <= 2) ? 2 : 1;
        var rows = cues.Select((cue, i) => (Number: i + 1, Lines: Lines(cue, perRow))).Chunk(perRow).ToList();
        foreach (var row in rows)
        {
            var height = Math.Max(SquareMm, row.Max(c => c.Lines.Count) * _frame.Type.LineMm(_frame.Type.BodyPt) + 0.3);
            yield return new Block(height, (sketch, top, _) =>
            {
                for (var i = 0; i < row.Length; i++) Cue(sketch, row[i].Number, row[i].Lines, _frame.LeftMm + i * (CellMm(perRow) + GutterMm), top);
            })
            { GapMm = 1.6, StaysWithNext = row != rows[^1] };
        }
    }

    private double CellMm(int perRow) => (_frame.RoomMm - (perRow - 1) * GutterMm) / perRow;

    private IReadOnlyList<string> Lines(string cue, int perRow) =>
        _frame.Type.Lines(cue, CellMm(perRow) - SquareMm - AfterSquareMm, _frame.Type.BodyPt);

    private void Cue(Sketch sketch, int number, IReadOnlyList<string> lines, double left, double top)
    {
        sketch.Add(new Box(left, top, SquareMm, SquareMm, Tone.Accent, Sketch.EdgeMm, 1));
        sketch.Centred(left + SquareMm / 2, top + SquareMm / 2, $"{number}", _frame.Type.BodyPt, Tone.Accent, TextWeight.Bold);
        sketch.Paragraph(left + SquareMm + AfterSquareMm, top + Math.Max(0.25, SquareMm / 2 + TypeScale.HalfCapitalMm(_frame.Type.BodyPt) - TypeScale.AscentMm(_frame.Type.BodyPt)), lines, _frame.Type.BodyPt);
    }
}
