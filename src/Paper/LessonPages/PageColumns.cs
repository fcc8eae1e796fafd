using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.LessonPages;

/// <summary>Columns of small lines beside each other, and what stands in them.</summary>
internal sealed class PageColumns(PageFrame frame, double? sizePt = null)
{
    public const double GutterMm = 6;
    private const double MarkMm = 5.5;
    private const double BoxMm = 3.4;
    private const string CutEnd = "…";

    public double SizePt => sizePt ?? frame.Type.SmallPt;

    public double LineMm => frame.Type.LineMm(SizePt);

    /// <summary>The width of one of two columns.</summary>
    public double HalfMm => (frame.RoomMm - GutterMm) / 2;

    /// <summary>A text in lines, cut with a mark of omission where it takes more than it may; its ending is never cut.</summary>
    public IEnumerable<PageLine> Lines(
        string text, double widthMm, string mark = "", int mostCount = int.MaxValue, bool isBold = false, Tone tone = Tone.Ink, string ending = "")
    {
        var weight = isBold ? TextWeight.Bold : TextWeight.Regular;
        var room = widthMm - (mark.Length > 0 ? MarkMm : 0);
        var lines = frame.Type.Lines(text + ending, room, SizePt, weight);
        if (lines.Count > mostCount) lines = [.. lines.Take(mostCount - 1), Cut(string.Join(' ', frame.Type.Lines(text, room, SizePt, weight).Skip(mostCount - 1)), ending, room, weight)];
        return lines.Select((line, i) => new PageLine(line, i == 0 || mark.Length == 0 ? mark : PageLine.Indent) { IsBold = isBold, Tone = tone });
    }

    public PageLine Heading(string words) => new(words) { IsBold = true };

    /// <summary>One block of columns that begin at one height.</summary>
    public Block Block(double gapMm, params (double LeftMm, IReadOnlyList<PageLine> Lines)[] columns) => new(
        columns.Max(c => c.Lines.Count) * LineMm,
        (sketch, top, _) =>
        {
            foreach (var (left, lines) in columns)
                for (var i = 0; i < lines.Count; i++) Draw(sketch, lines[i], left, top + i * LineMm);
        })
    { GapMm = gapMm };

    private void Draw(Sketch sketch, PageLine line, double left, double top)
    {
        var baseline = top + TypeScale.AscentMm(SizePt);
        var weight = line.IsBold ? TextWeight.Bold : TextWeight.Regular;
        if (line.Mark == PageLine.Box)
            sketch.Add(new Box(left + 0.2, baseline - TypeScale.HalfCapitalMm(SizePt) - BoxMm / 2, BoxMm, BoxMm, Tone.Muted, Sketch.EdgeMm, 0.4));
        else if (line.Mark != PageLine.Indent) sketch.Words(left, baseline, line.Mark, SizePt, line.Tone, TextWeight.Bold);
        sketch.Words(left + (line.Mark.Length > 0 ? MarkMm : 0), baseline, line.Words, SizePt, line.Tone, weight);
    }

    private string Cut(string line, string ending, double roomMm, TextWeight weight)
    {
        string Ended(string kept) => $"{kept.TrimEnd(' ', ',', '.', ';')}{CutEnd}{ending}";
        while (line.Length > 0 && frame.Type.WidthMm(Ended(line), SizePt, weight) > roomMm) line = line[..^1];
        return Ended(line);
    }
}
