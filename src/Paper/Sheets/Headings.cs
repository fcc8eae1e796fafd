using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>A heading with a quiet sentence after it.</summary>
internal static class Headings
{
    private const double GapMm = 2.5;

    public static Block Block(string heading, string hint, PageFrame frame)
    {
        var width = frame.Type.WidthMm(heading, frame.Type.BodyPt, TextWeight.Bold);
        var line = frame.Type.LineMm(frame.Type.BodyPt);
        var isBeside = width + GapMm + frame.Type.WidthMm(hint, frame.Type.BodyPt) <= frame.RoomMm;
        var hints = isBeside ? [hint] : frame.Type.Lines(hint, frame.RoomMm, frame.Type.BodyPt);
        return new Block(isBeside ? line : line * (1 + hints.Count), (sketch, top, _) =>
        {
            sketch.Paragraph(frame.LeftMm, top, [heading], frame.Type.BodyPt, weight: TextWeight.Bold);
            sketch.Paragraph(
                isBeside ? frame.LeftMm + width + GapMm : frame.LeftMm, isBeside ? top : top + line, hints, frame.Type.BodyPt, Tone.Muted);
        })
        { StaysWithNext = true };
    }
}
