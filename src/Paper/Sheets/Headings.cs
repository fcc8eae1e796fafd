using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>A heading with a quiet sentence after it.</summary>
internal static class Headings
{
    private const double GapMm = 2.5;

    public static Block Block(string heading, string hint, PageFrame frame)
    {
        var width = TextMeasure.WidthMm(heading, TypeScale.BodyPt, TextWeight.Bold);
        var line = TypeScale.LineMm(TypeScale.BodyPt);
        var isBeside = width + GapMm + TextMeasure.WidthMm(hint, TypeScale.BodyPt) <= frame.RoomMm;
        var hints = isBeside ? [hint] : TextMeasure.Lines(hint, frame.RoomMm, TypeScale.BodyPt);
        return new Block(isBeside ? line : line * (1 + hints.Count), (sketch, top, _) =>
        {
            sketch.Paragraph(frame.LeftMm, top, [heading], TypeScale.BodyPt, weight: TextWeight.Bold);
            sketch.Paragraph(
                isBeside ? frame.LeftMm + width + GapMm : frame.LeftMm, isBeside ? top : top + line, hints, TypeScale.BodyPt, Tone.Muted);
        })
        { StaysWithNext = true };
    }
}
