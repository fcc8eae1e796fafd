using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>The foot of a page: lines for what the pupil has to say.</summary>
internal static class OwnWords
{
    // Wide enough for a ten-year-old's hand.
    private const double LineMm = 9;
    private const int MostCount = 4;

    public static Block Block(int leastCount, PageFrame frame, PaperWords words)
    {
        var heading = Headings.Block(words["OwnWords"], words["OwnWordsHint"], frame);
        return new Block(heading.LeastMm + leastCount * LineMm, (sketch, top, height) =>
        {
            heading.Draw(sketch, top, heading.LeastMm);
            var room = height - heading.LeastMm;
            var count = (int)(room / LineMm + 0.01);
            for (var i = 1; i <= count; i++) sketch.Rule(frame.LeftMm, frame.RightMm, top + heading.LeastMm + i * room / count, Tone.Faint, Sketch.EdgeMm);
        })
        { StretchMm = (MostCount - leastCount) * LineMm, GapMm = 3.4 };
    }
}
