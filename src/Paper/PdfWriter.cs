using System.Globalization;
using Slantwise.Engines.Drawing;
using SkiaSharp;

namespace Slantwise.Paper;

/// <summary>Writes scenes as the pages of a PDF: true sizes, embedded type, text that can be searched and copied.</summary>
public static class PdfWriter
{
    private const double PtPerMm = 72 / 25.4;

    // Sizes are rounded to 1/dpi inch: at this one, to 0.0035 mm.
    private const float RasterDpi = 7200;

    // A quarter circle as one cubic that meets the circle at its middle: 4/3 · (√2 − 1).
    private const double Kappa = 0.5522847498;

    /// <summary>Writes a document, a page a scene, each of its scene's size.</summary>
    /// <param name="pages">At least one, in order.</param>
    /// <param name="title">The document's title, shown in a reader's window.</param>
    /// <param name="language">The language of its text, for a reader that speaks.</param>
    /// <param name="target">Where to write; left open, written from its present position.</param>
    /// <exception cref="ArgumentException">No page; a page whose size is not more than 0.</exception>
    public static void Write(IReadOnlyList<Scene> pages, string title, CultureInfo language, Stream target)
    {
        if (pages.Count == 0) throw new ArgumentException("A document has at least one page.", nameof(pages));
        if (pages.FirstOrDefault(p => !(p.WidthMm > 0 && p.HeightMm > 0)) is { } bad)
            throw new ArgumentException($"A page is more than 0 mm wide and high; one is {bad.WidthMm} by {bad.HeightMm}.", nameof(pages));
        using var buffer = new MemoryStream();
        using (var document = SKDocument.CreatePdf(buffer, new SKDocumentPdfMetadata(RasterDpi) { Title = title, Creator = "Slantwise" }))
        {
            foreach (var page in pages)
            {
                var canvas = document.BeginPage((float)(page.WidthMm * PtPerMm), (float)(page.HeightMm * PtPerMm));
                canvas.Scale((float)PtPerMm);
                foreach (var shape in page.Shapes) Draw(canvas, shape);
                document.EndPage();
            }
            document.Close();
        }
        target.Write(PdfLanguage.Declared(buffer.ToArray(), language));
    }

    private static void Draw(SKCanvas canvas, Shape shape)
    {
        switch (shape)
        {
            case Line line: Draw(canvas, line); break;
            case Box box: Draw(canvas, box); break;
            case Disc disc: Draw(canvas, disc); break;
            case Outline outline: Draw(canvas, outline); break;
            case Text text: Draw(canvas, text); break;
            default: throw new ArgumentException($"A page has no shape of the kind {shape.GetType().Name}.", nameof(shape));
        }
    }

    private static void Draw(SKCanvas canvas, Line line)
    {
        using var paint = Paint(line.Tone, line.WidthMm);
        using var dash = line.IsDashed
            ? SKPathEffect.CreateDash([(float)(line.WidthMm * Dash.OnWidths), (float)(line.WidthMm * Dash.OffWidths)], 0)
            : null;
        paint.PathEffect = dash;
        canvas.DrawLine((float)line.X1Mm, (float)line.Y1Mm, (float)line.X2Mm, (float)line.Y2Mm, paint);
    }

    private static void Draw(SKCanvas canvas, Box box)
    {
        using var paint = Paint(box.Tone, box.StrokeMm);
        var rect = SKRect.Create((float)box.XMm, (float)box.YMm, (float)box.WidthMm, (float)box.HeightMm);
        if (box.RadiusMm > 0) DrawRounded(canvas, rect, (float)Math.Min(box.RadiusMm, Math.Min(box.WidthMm, box.HeightMm) / 2), paint);
        else canvas.DrawRect(rect, paint);
    }

    private static void Draw(SKCanvas canvas, Disc disc)
    {
        var (x, y, r) = ((float)disc.XMm, (float)disc.YMm, (float)disc.RadiusMm);
        using var paint = Paint(disc.Tone, disc.StrokeMm);
        DrawRounded(canvas, new SKRect(x - r, y - r, x + r, y + r), r, paint);
    }

    // A cubic a corner: the library's own circles and corners take eight times the pieces in the file, at no visible gain.
    private static void DrawRounded(SKCanvas canvas, SKRect rect, float r, SKPaint paint)
    {
        var off = r * (float)(1 - Kappa);
        var (left, top, right, bottom) = (rect.Left, rect.Top, rect.Right, rect.Bottom);
        using var path = new SKPathBuilder();
        path.MoveTo(left + r, top);
        path.LineTo(right - r, top);
        path.CubicTo(right - off, top, right, top + off, right, top + r);
        path.LineTo(right, bottom - r);
        path.CubicTo(right, bottom - off, right - off, bottom, right - r, bottom);
        path.LineTo(left + r, bottom);
        path.CubicTo(left + off, bottom, left, bottom - off, left, bottom - r);
        path.LineTo(left, top + r);
        path.CubicTo(left, top + off, left + off, top, left + r, top);
        path.Close();
        using var done = path.Detach();
        canvas.DrawPath(done, paint);
    }

    private static void Draw(SKCanvas canvas, Outline outline)
    {
        using var path = new SKPathBuilder();
        foreach (var step in outline.Steps)
        {
            switch (step.Kind)
            {
                case OutlineStepKind.Move: path.MoveTo((float)step.XMm, (float)step.YMm); break;
                case OutlineStepKind.Line: path.LineTo((float)step.XMm, (float)step.YMm); break;
                case OutlineStepKind.Curve:
                    path.CubicTo(
                        (float)step.C1XMm, (float)step.C1YMm, (float)step.C2XMm, (float)step.C2YMm, (float)step.XMm, (float)step.YMm);
                    break;
                default: path.Close(); break;
            }
        }
        using var paint = Paint(outline.Tone, outline.StrokeMm);
        (paint.StrokeCap, paint.StrokeJoin) = (SKStrokeCap.Round, SKStrokeJoin.Round);
        using var done = path.Detach();
        canvas.DrawPath(done, paint);
        if (outline is not { StrokeMm: > 0, Inside: { } inside }) return;
        using var fill = Paint(inside, 0);
        canvas.DrawPath(done, fill);
    }

    private static void Draw(SKCanvas canvas, Text text)
    {
        using var paint = Paint(text.Tone, 0);
        using var font = TextMeasure.FontOf(text.Weight, (float)(text.SizePt / PtPerMm));
        var content = Printable.Of(text.Content);
        var widthMm = text.Anchor == TextAnchor.Start ? 0 : TextMeasure.WidthMm(content, text.SizePt, text.Weight, text.Spacing);
        var left = text.XMm - text.Anchor switch { TextAnchor.Middle => widthMm / 2, TextAnchor.End => widthMm, _ => 0 };
        if (text.Spacing == default)
        {
            canvas.DrawText(content, (float)left, (float)text.BaselineMm, SKTextAlign.Left, font, paint);
            return;
        }
        var places = TextMeasure.PlacesOf(content, font, text.Spacing);
        if (places.Length == 0) return;
        using var spaced = SKTextBlob.CreateHorizontal(content, font, places, 0);
        canvas.DrawText(spaced, (float)left, (float)text.BaselineMm, paint);
    }

    private static SKPaint Paint(Tone tone, double strokeMm) => new()
    {
        Color = SKColor.Parse(PrintColours.HexOf(tone)),
        IsAntialias = true,
        Style = strokeMm > 0 ? SKPaintStyle.Stroke : SKPaintStyle.Fill,
        StrokeWidth = (float)strokeMm,
    };
}
