using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Cards;

/// <summary>A triangle with a mark of exclamation, drawn. It stands only where there is a caution.</summary>
internal static class CautionSign
{
    public static void Draw(Sketch sketch, double leftMm, double topMm, double sizeMm)
    {
        var (middle, right, bottom) = (leftMm + sizeMm / 2, leftMm + sizeMm, topMm + sizeMm * 0.9);
        sketch.Add(new Pen().MoveTo(middle, topMm).LineTo(right, bottom).LineTo(leftMm, bottom).Close().Stroke(sizeMm * 0.1, Tone.Caution));
        sketch.Add(new Line(middle, topMm + sizeMm * 0.32, middle, topMm + sizeMm * 0.6, sizeMm * 0.11, Tone.Caution));
        sketch.Add(new Disc(middle, topMm + sizeMm * 0.74, sizeMm * 0.065, Tone.Caution));
    }
}
