using Slantwise.Engines.Drawing;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Forms;

/// <summary>What makes a page a form that can be read back: black squares along its edges, and its code at the bottom right.</summary>
internal static class FormFrame
{
    /// <summary>The code's side.</summary>
    public const double CodeMm = 20;

    private const double FromEdgeMm = 9;
    private const double CornerMm = 5;
    private const double SideMm = 2.5;
    private const double CodeFromEdgeMm = 15;
    private const double BesideMm = 1;

    // Four modules on every side, of the 25 that a code has. Source: [ISO18004] 5.3.8.
    private const double QuietMm = 4 * CodeMm / 25;

    // Along the left and the right edge, against curl.
    private static readonly double[] SideFractions = [0.25, 0.5, 0.75];

    /// <summary>How much of a page's room at the bottom lies beside the code and its quiet zone.</summary>
    public static double FootMm(PageFrame frame) => Math.Max(0, frame.BottomMm - frame.HeightMm + CodeMm + QuietMm + CodeFromEdgeMm);

    /// <summary>How much of a page's room at the right the code and its quiet zone take.</summary>
    public static double CodeRoomMm(PageFrame frame) => Math.Max(0, frame.RightMm - frame.WidthMm + CodeMm + QuietMm + CodeFromEdgeMm) + BesideMm;

    /// <summary>The form of a page whose marks were sketched.</summary>
    public static SheetLayout Of(PageFrame frame, Sketch sketch) => new(
        frame.WidthMm, frame.HeightMm, [.. Anchors(frame)], Code(frame), sketch.Marks, sketch.Writings);

    /// <summary>The shapes a reader finds the form by; its code apart.</summary>
    public static IEnumerable<Shape> Shapes(SheetLayout layout)
    {
        foreach (var a in layout.Anchors)
        {
            // The hollow one as a stroke: whatever the paper's colour, its middle is paper.
            var stroke = a.IsHollow ? a.SizeMm / 4 : 0;
            yield return new Box(
                a.XMm - a.SizeMm / 2 + stroke / 2, a.YMm - a.SizeMm / 2 + stroke / 2, a.SizeMm - stroke, a.SizeMm - stroke, Tone.Ink, stroke);
        }
    }

    private static CodePlace Code(PageFrame frame) =>
        new(frame.WidthMm - CodeFromEdgeMm - CodeMm, frame.HeightMm - CodeFromEdgeMm - CodeMm, CodeMm);

    private static IEnumerable<Anchor> Anchors(PageFrame frame)
    {
        var (right, bottom) = (frame.WidthMm - FromEdgeMm, frame.HeightMm - FromEdgeMm);
        yield return new(FromEdgeMm, FromEdgeMm, CornerMm, IsHollow: true);
        yield return new(right, FromEdgeMm, CornerMm);
        yield return new(right, bottom, CornerMm);
        yield return new(FromEdgeMm, bottom, CornerMm);
        foreach (var fraction in SideFractions)
        {
            yield return new(FromEdgeMm, frame.HeightMm * fraction, SideMm);
            yield return new(right, frame.HeightMm * fraction, SideMm);
        }
    }
}
