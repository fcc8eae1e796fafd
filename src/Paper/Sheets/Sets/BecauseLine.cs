using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>A line for the reason.</summary>
internal sealed class BecauseLine(SheetStyle style, int task, int set) : SetPiece(style)
{
    private const double UnderLineMm = 1;

    // A ten-year-old's hand.
    private double WritingMm => Math.Max(7, Type.LineMm(Type.SmallPt));

    public override string Label => Style.Words["Because"];

    public override double WidthMm => Type.WidthMm(Label, Type.SmallPt) + 25;

    public override double HeightMm(double widthMm) => WritingMm + UnderLineMm;

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        var line = top + WritingMm;
        var start = labelMm > 0 ? left : left + Type.WidthMm(Label, Type.SmallPt) + BesideMm;
        sketch.Words(labelMm > 0 ? left - labelMm : left, line - 1.2, Label, Type.SmallPt, Tone.Muted);
        sketch.Rule(start, left + width, line, Tone.Faint, Sketch.EdgeMm);
        sketch.Writing(new SheetField(SheetFieldKind.Because, task, set), start, top, left + width - start, HeightMm(width));
    }
}
