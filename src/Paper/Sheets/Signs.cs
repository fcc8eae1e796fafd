using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>Small drawn signs, none of which judges: each stands with its left edge and middle at a place.</summary>
internal static class Signs
{
    private const double StrokeMm = 0.45;

    public static void Tick(Sketch sketch, double left, double middle, double size) => sketch.Add(new Pen()
        .MoveTo(left + size * 0.08, middle + size * 0.05).LineTo(left + size * 0.36, middle + size * 0.34).LineTo(left + size * 0.92, middle - size * 0.36)
        .Stroke(StrokeMm, Tone.Ink));

    public static void Ring(Sketch sketch, double left, double middle, double size) =>
        sketch.Add(new Disc(left + size / 2, middle, size * 0.36, Tone.Ink, StrokeMm));
}
