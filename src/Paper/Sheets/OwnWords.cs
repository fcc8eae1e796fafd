using Slantwise.Engines.Drawing;
using Slantwise.Paper.Forms;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets;

/// <summary>The foot of a task's last page: lines for what the pupil has to say, beside the form's code.</summary>
internal static class OwnWords
{
    // Wide enough for a ten-year-old's hand.
    private const double LineMm = 9;
    private const int LeastCount = 2;
    private const int MostCount = 4;

    public static Block Block(SheetStyle style, int task)
    {
        var frame = style.Frame with { MostLineMm = style.Frame.RoomMm - FormFrame.CodeRoomMm(style.Frame) };
        var lineMm = Math.Max(LineMm, style.Type.LineMm(style.Type.BodyPt) + 1);
        var heading = Headings.Block(style.Words["OwnWords"], style.Words["OwnWordsHint"], frame);
        var least = Math.Max(heading.LeastMm + LeastCount * lineMm, FormFrame.FootMm(style.Frame));
        return new Block(least, (sketch, top, height) =>
        {
            heading.Draw(sketch, top, heading.LeastMm);
            var (start, room) = (top + heading.LeastMm, height - heading.LeastMm);
            var count = (int)(room / lineMm + 0.01);
            for (var i = 1; i <= count; i++) sketch.Rule(frame.LeftMm, frame.RightMm, start + i * room / count, Tone.Faint, Sketch.EdgeMm);
            sketch.Writing(new SheetField(SheetFieldKind.OwnWords, task), frame.LeftMm, start, frame.RoomMm, room);
        })
        { StretchMm = (MostCount - LeastCount) * lineMm, GapMm = 3.4, IsFoot = true };
    }
}
