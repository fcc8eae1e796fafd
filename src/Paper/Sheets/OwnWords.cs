using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>The foot of a page: lines for what the pupil has to say.</summary>
internal static class OwnWords
{
    // Wide enough for a ten-year-old's hand.
    private const double LineMm = 9;
    private const int LeastCount = 1;
    private const int MostCount = 4;

    public static Block Block(PageFrame frame, PaperWords words)
    {
        var heading = Headings.Block(words["OwnWords"], words["OwnWordsHint"], frame);
        return new Block(heading.LeastMm + LeastCount * LineMm, (sketch, top, height) =>
        {
            heading.Draw(sketch, top, heading.LeastMm);
            var count = (int)((height - heading.LeastMm + 0.01) / LineMm);
            for (var i = 1; i <= count; i++) sketch.Rule(frame.LeftMm, frame.RightMm, top + heading.LeastMm + i * LineMm, Tone.Faint, Sketch.EdgeMm);
        })
        { StretchMm = (MostCount - LeastCount) * LineMm, GapMm = 4 };
    }
}
