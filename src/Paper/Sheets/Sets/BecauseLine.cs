using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>A line for the reason.</summary>
internal sealed class BecauseLine(SheetStyle style, int task, int set) : SetPiece(style)
{
    private const double UnderLineMm = 1;
    private const double OverLineMm = 1.2;
    private const double LeastLineMm = 22;

    // A ten-year-old's hand.
    private double WritingMm => Math.Max(7, Type.LineMm(Type.SmallPt));

    public override double WidthMm => LabelMm + LeastLineMm;

    public override double HeightMm(double widthMm) => WritingMm + UnderLineMm;

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        var line = top + WritingMm;
        var start = labelMm > 0 ? left : left + LabelMm;
        LabelOn(sketch, LabelSign, Label, start - (labelMm > 0 ? labelMm : LabelMm), line - OverLineMm - TypeScale.HalfCapitalMm(Type.SmallPt));
        sketch.Rule(start, left + width, line, Tone.Faint, Sketch.EdgeMm);
        sketch.Writing(new SheetField(SheetFieldKind.Because, task, set), start, top, left + width - start, HeightMm(width));
    }
}
