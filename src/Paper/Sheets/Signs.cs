using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>Draws signs: each stands with its left edge and its middle at a place.</summary>
internal static class Signs
{
    /// <summary>White between a sign and its word.</summary>
    public static double AfterMm(double sizePt) => sizePt * 0.145;

    private const double StrokeFraction = 0.12;
    private const int DotsInRow = 3;

    /// <summary>The side of a sign beside words of a size.</summary>
    public static double SizeMm(double sizePt) => sizePt * 0.32;

    /// <summary>The distance of two dots.</summary>
    public static double DotsMm(SheetStyle style) => style.Type.SmallPt * 0.18;

    /// <summary>The height of a pattern of dots, in rows of three.</summary>
    public static double DotsHighMm(int count, double stepMm) => ((count - 1) / DotsInRow + 0.6) * stepMm;

    public static void Draw(Sketch sketch, Sign sign, double left, double middle, double size)
    {
        Pen At(double x, double y) => new Pen().MoveTo(left + x * size, middle + y * size);
        double X(double x) => left + x * size;
        double Y(double y) => middle + y * size;
        var stroke = size * StrokeFraction;
        switch (sign)
        {
            case Sign.Tick:
                sketch.Add(At(0.08, 0.05).LineTo(X(0.36), Y(0.34)).LineTo(X(0.92), Y(-0.36)).Stroke(stroke, Tone.Ink));
                break;
            case Sign.Ring:
                sketch.Add(new Disc(X(0.5), middle, size * 0.36, Tone.Ink, stroke));
                break;
            case Sign.Target:
                sketch.Add(new Disc(X(0.5), middle, size * 0.44, Tone.Ink, stroke * 0.8));
                sketch.Add(new Disc(X(0.5), middle, size * 0.16, Tone.Ink));
                break;
            case Sign.Box:
                sketch.Add(At(0.8, 0).LineTo(X(0.8), Y(0.36)).LineTo(X(0.06), Y(0.36)).LineTo(X(0.06), Y(-0.36)).LineTo(X(0.6), Y(-0.36)).Stroke(stroke * 0.8, Tone.Ink));
                sketch.Add(At(0.26, -0.06).LineTo(X(0.44), Y(0.14)).LineTo(X(0.94), Y(-0.42)).Stroke(stroke, Tone.Ink));
                break;
            case Sign.Speech:
                sketch.Add(At(0.04, -0.38).LineTo(X(0.96), Y(-0.38)).LineTo(X(0.96), Y(0.2)).LineTo(X(0.5), Y(0.2)).LineTo(X(0.26), Y(0.46)).LineTo(X(0.26), Y(0.2))
                    .LineTo(X(0.04), Y(0.2)).Close().Stroke(stroke * 0.8, Tone.Ink));
                break;
            case Sign.Down: Arrow(sketch, X(0.12), Y(-0.3), X(0.88), Y(0.3), size); break;
            case Sign.Along: Arrow(sketch, X(0.05), middle, X(0.95), middle, size); break;
            case Sign.Up: Arrow(sketch, X(0.12), Y(0.3), X(0.88), Y(-0.3), size); break;
            default: break;
        }
    }

    /// <summary>As many dots as a number says.</summary>
    public static void Dots(Sketch sketch, double left, double middle, double stepMm, int count)
    {
        var top = middle - (count - 1) / DotsInRow * stepMm / 2;
        for (var i = 0; i < count; i++)
            sketch.Add(new Disc(left + (i % DotsInRow + 0.3) * stepMm, top + i / DotsInRow * stepMm, stepMm * 0.3, Tone.Accent));
    }

    // A path ahead: downhill, level, uphill.
    private static void Arrow(Sketch sketch, double fromX, double fromY, double toX, double toY, double size)
    {
        var (dx, dy) = (toX - fromX, toY - fromY);
        var length = Math.Sqrt(dx * dx + dy * dy);
        var (ux, uy) = (dx / length * size * 0.3, dy / length * size * 0.3);
        sketch.Add(new Pen().MoveTo(fromX, fromY).LineTo(toX, toY).Stroke(size * StrokeFraction, Tone.Ink));
        sketch.Add(new Pen().MoveTo(toX - ux + uy, toY - uy - ux).LineTo(toX, toY).LineTo(toX - ux - uy, toY - uy + ux).Stroke(size * StrokeFraction, Tone.Ink));
    }
}
