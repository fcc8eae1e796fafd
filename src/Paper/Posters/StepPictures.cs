using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Paper.Cards;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Paper.Posters;

/// <summary>The pictures of the steps of a set. What they show is an example, not advice: no level is marked as the right one.</summary>
internal static class StepPictures
{
    /// <summary>Three shapes of one task; a hand has ringed one.</summary>
    public static void Choose(Sketch sketch, Area area)
    {
        string[] postures = ["one-foot-toes-down", "stork", "one-foot-leg-front"];
        var step = area.WidthMm / postures.Length;
        for (var i = 0; i < postures.Length; i++)
        {
            var cell = new Area(area.LeftMm + i * step, area.TopMm, step, area.HeightMm);
            Figure(sketch, postures[i], cell.Inside(area.HeightMm * 0.08));
            if (i == 1) Ring(sketch, cell);
        }
    }

    /// <summary>A speech bubble with a guess.</summary>
    public static void Think(Sketch sketch, Area area, string guess)
    {
        var size = area.HeightMm;
        var figure = new Area(area.LeftMm + area.WidthMm * 0.12, area.TopMm, area.WidthMm * 0.22, size);
        Figure(sketch, "two-feet", figure);
        var (left, right) = (area.LeftMm + area.WidthMm * 0.4, area.LeftMm + area.WidthMm * 0.86);
        var (top, bottom) = (area.TopMm + size * 0.08, area.TopMm + size * 0.68);
        sketch.Add(new Pen().MoveTo(left, top).LineTo(right, top).LineTo(right, bottom).LineTo(left + size * 0.3, bottom).LineTo(left - size * 0.05, bottom + size * 0.14)
            .LineTo(left + size * 0.1, bottom).LineTo(left, bottom).Close().Stroke(size * 0.03, Tone.Ink));
        sketch.Centred((left + right) / 2, (top + bottom) / 2, guess, size * 1.1, Tone.Ink, TextWeight.Bold);
    }

    /// <summary>A shape being held, tries marked one by one, and the numbered squares of the cues.</summary>
    public static void Try(Sketch sketch, Area area)
    {
        var size = area.HeightMm;
        Figure(sketch, "stork", new Area(area.LeftMm + area.WidthMm * 0.08, area.TopMm, area.WidthMm * 0.26, size));
        var box = Math.Min(size * 0.26, area.WidthMm * 0.1);
        for (var i = 0; i < 4; i++)
        {
            var (x, y) = (area.LeftMm + area.WidthMm * 0.42 + i * box * 1.35, area.TopMm + size * 0.16);
            sketch.Add(new Disc(x + box / 2, y + box / 2, box / 2, Tone.Ink, box * 0.07));
            if (i is 0 or 2) Tick(sketch, x, y, box);
            sketch.Add(new Box(x, y + size * 0.42, box, box, Tone.Accent, box * 0.07, box * 0.15));
            if (i < 2) Tick(sketch, x, y + size * 0.42, box);
        }
    }

    /// <summary>Three ways on, alike in size: easier, the same, harder.</summary>
    public static void Decide(Sketch sketch, Area area, IReadOnlyList<string> names, TypeScale type)
    {
        Sign[] signs = [Sign.Down, Sign.Along, Sign.Up];
        var step = area.WidthMm / signs.Length;
        var size = Math.Min(area.HeightMm * 0.55, step * 0.6);
        var sizePt = Math.Min(area.HeightMm * 0.7, names.Min(n => step * 0.9 / type.WidthMm(n, 1)));
        for (var i = 0; i < signs.Length; i++)
        {
            var middle = area.LeftMm + (i + 0.5) * step;
            Signs.Draw(sketch, signs[i], middle - size / 2, area.TopMm + size * 0.6, size);
            sketch.Words(middle, area.BottomMm - area.HeightMm * 0.06, names[i], sizePt, anchor: TextAnchor.Middle);
        }
    }

    private static void Tick(Sketch sketch, double x, double y, double size) => sketch.Add(
        new Pen().MoveTo(x + size * 0.2, y + size * 0.52).LineTo(x + size * 0.43, y + size * 0.76).LineTo(x + size * 0.84, y + size * 0.2).Stroke(size * 0.12, Tone.Ink));

    // As drawn by hand: not quite round, its ends past each other.
    private static void Ring(Sketch sketch, Area cell)
    {
        var (x, y, rx, ry) = (cell.MiddleMm, cell.TopMm + cell.HeightMm / 2, Math.Min(cell.WidthMm, cell.HeightMm) * 0.5, cell.HeightMm * 0.52);
        const double Kappa = 0.5522847498;
        sketch.Add(new Pen().MoveTo(x - rx * 0.2, y - ry * 0.98)
            .CurveTo(x + rx * Kappa, y - ry, x + rx, y - ry * Kappa, x + rx, y)
            .CurveTo(x + rx, y + ry * Kappa, x + rx * Kappa, y + ry, x, y + ry)
            .CurveTo(x - rx * Kappa, y + ry, x - rx, y + ry * Kappa, x - rx, y)
            .CurveTo(x - rx, y - ry * Kappa, x - rx * 0.4, y - ry * 0.98, x + rx * 0.2, y - ry * 0.9).Stroke(cell.HeightMm * 0.035, Tone.Accent));
    }

    private static void Figure(Sketch sketch, string key, Area area)
    {
        if (PostureLibrary.Find(key) is not { } posture) return;
        var box = new FigureOptions(FigureView.Front, area.WidthMm, area.HeightMm) { ShowsFloor = false };
        foreach (var shape in PostureFigure.Of(posture.Settle(), box, "").Scene.Shapes) sketch.Add(ShapeMove.By(shape, area.LeftMm, area.TopMm));
    }
}
