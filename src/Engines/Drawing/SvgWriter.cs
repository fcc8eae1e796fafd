using System.Globalization;
using System.Text;

namespace Slantwise.Engines.Drawing;

/// <summary>Writes a scene as SVG for a page: colours are the page's own, with the printed ones where it names none.</summary>
/// <remarks>
/// A tone becomes <c>var(--tone-ink, #rrggbb)</c>, <c>--tone-accent-soft</c> and so on; the type family is <c>var(--type-family, …)</c>.
/// Both stand in attributes, not in a style element, so that a page that forbids inline styles shows the drawing and nothing leaks into it.
/// Source: [SVG2018] chapters 5, 6, 9, 10 and 11.
/// </remarks>
public static class SvgWriter
{
    private const double MmPerPt = 25.4 / 72;

    /// <summary>The scene as one <c>svg</c> element.</summary>
    /// <param name="scene">What to draw. Characters that XML has no place for are written as U+FFFD.</param>
    /// <returns>Well-formed XML, sized in millimetres, without a declaration: ready to stand in a page or in a file of its own.</returns>
    /// <exception cref="ArgumentException">A number that is not finite, or a size that is not more than 0.</exception>
    public static string Write(Scene scene)
    {
        if (!(scene.WidthMm > 0 && scene.HeightMm > 0))
            throw new ArgumentException($"A scene is more than 0 mm wide and high; this one is {scene.WidthMm} by {scene.HeightMm}.", nameof(scene));
        var svg = new StringBuilder();
        var (width, height) = (Short(scene.WidthMm), Short(scene.HeightMm));
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        Attribute(svg, "width", width + "mm");
        Attribute(svg, "height", height + "mm");
        Attribute(svg, "viewBox", $"0 0 {width} {height}");
        Attribute(svg, "font-family", "var(--type-family, 'Atkinson Hyperlegible Next', sans-serif)");
        // Without a description a text beside the drawing says the same: a screen reader passes over it.
        if (scene.Description.Length == 0) svg.Append(" aria-hidden=\"true\">");
        else Describe(svg, scene.Description);
        Append(svg, scene.Shapes);
        return svg.Append("\n</svg>").ToString();
    }

    /// <summary>Shapes alone, to stand inside an <c>svg</c> element whose units are millimetres: a drawing in pieces that a page moves.</summary>
    /// <param name="shapes">Any number, drawn in order.</param>
    /// <exception cref="ArgumentException">A number that is not finite.</exception>
    public static string Write(IReadOnlyList<Shape> shapes)
    {
        var svg = new StringBuilder();
        Append(svg, shapes);
        return svg.ToString();
    }

    private static void Append(StringBuilder svg, IReadOnlyList<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            svg.Append('\n');
            Append(svg, shape);
        }
    }

    // The first sentence names the drawing, what follows describes it.
    private static void Describe(StringBuilder svg, string description)
    {
        var end = description.IndexOf(". ", StringComparison.Ordinal);
        svg.Append(" role=\"img\">\n<title>");
        Escape(svg, end < 0 ? description : description[..(end + 1)]);
        svg.Append("</title>");
        if (end < 0) return;
        svg.Append("\n<desc>");
        Escape(svg, description[(end + 2)..]);
        svg.Append("</desc>");
    }

    private static void Append(StringBuilder svg, Shape shape)
    {
        switch (shape)
        {
            case Line line: Append(svg, line); break;
            case Box box: Append(svg, box); break;
            case Disc disc: Append(svg, disc); break;
            case Outline outline: Append(svg, outline); break;
            case Text text: Append(svg, text); break;
            default: throw new ArgumentException($"A scene has no shape of the kind {shape.GetType().Name}.", nameof(shape));
        }
    }

    private static void Append(StringBuilder svg, Line line)
    {
        svg.Append("<line");
        Number(svg, "x1", line.X1Mm);
        Number(svg, "y1", line.Y1Mm);
        Number(svg, "x2", line.X2Mm);
        Number(svg, "y2", line.Y2Mm);
        Attribute(svg, "stroke", Paint(line.Tone));
        Number(svg, "stroke-width", line.WidthMm);
        if (line.IsDashed)
            Attribute(svg, "stroke-dasharray", $"{Short(line.WidthMm * Dash.OnWidths)} {Short(line.WidthMm * Dash.OffWidths)}");
        svg.Append("/>");
    }

    private static void Append(StringBuilder svg, Box box)
    {
        svg.Append("<rect");
        Number(svg, "x", box.XMm);
        Number(svg, "y", box.YMm);
        Number(svg, "width", box.WidthMm);
        Number(svg, "height", box.HeightMm);
        if (box.RadiusMm > 0) Number(svg, "rx", box.RadiusMm);
        FillOrStroke(svg, box.Tone, box.StrokeMm);
        svg.Append("/>");
    }

    private static void Append(StringBuilder svg, Disc disc)
    {
        svg.Append("<circle");
        Number(svg, "cx", disc.XMm);
        Number(svg, "cy", disc.YMm);
        Number(svg, "r", disc.RadiusMm);
        FillOrStroke(svg, disc.Tone, disc.StrokeMm);
        svg.Append("/>");
    }

    private static void Append(StringBuilder svg, Outline outline)
    {
        var d = string.Join(' ', outline.Steps.Select(step => step.Kind switch
        {
            OutlineStepKind.Move => $"M{Short(step.XMm)} {Short(step.YMm)}",
            OutlineStepKind.Line => $"L{Short(step.XMm)} {Short(step.YMm)}",
            OutlineStepKind.Curve =>
                $"C{Short(step.C1XMm)} {Short(step.C1YMm)} {Short(step.C2XMm)} {Short(step.C2YMm)} {Short(step.XMm)} {Short(step.YMm)}",
            _ => "Z",
        }));
        svg.Append("<path");
        Attribute(svg, "d", d);
        FillOrStroke(svg, outline.Tone, outline.StrokeMm, outline.Inside);
        if (outline.StrokeMm > 0) svg.Append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        svg.Append("/>");
    }

    private static void Append(StringBuilder svg, Text text)
    {
        svg.Append("<text");
        Number(svg, "x", text.XMm);
        Number(svg, "y", text.BaselineMm);
        Number(svg, "font-size", text.SizePt * MmPerPt);
        if (text.Weight == TextWeight.Bold) svg.Append(" font-weight=\"700\"");
        if (text.Anchor != TextAnchor.Start) Attribute(svg, "text-anchor", text.Anchor == TextAnchor.Middle ? "middle" : "end");
        if (text.Spacing.LetterFraction != 0) Number(svg, "letter-spacing", text.SizePt * MmPerPt * text.Spacing.LetterFraction);
        if (text.Spacing.WordFraction != 0) Number(svg, "word-spacing", text.SizePt * MmPerPt * text.Spacing.WordFraction);
        Attribute(svg, "fill", Paint(text.Tone));
        svg.Append('>');
        Escape(svg, text.Content);
        svg.Append("</text>");
    }

    private static void FillOrStroke(StringBuilder svg, Tone tone, double strokeMm, Tone? inside = null)
    {
        if (strokeMm > 0)
        {
            Attribute(svg, "fill", inside is { } fill ? Paint(fill) : "none");
            if (inside is not null) Attribute(svg, "paint-order", "stroke");
            Attribute(svg, "stroke", Paint(tone));
            Number(svg, "stroke-width", strokeMm);
        }
        else
        {
            Attribute(svg, "fill", Paint(tone));
        }
    }

    private static string Paint(Tone tone) => $"var(--tone-{Kebab(tone)}, {PrintColours.HexOf(tone)})";

    private static string Kebab(Tone tone) =>
        string.Concat(tone.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static void Attribute(StringBuilder svg, string name, string value) =>
        svg.Append(' ').Append(name).Append("=\"").Append(value).Append('"');

    private static void Number(StringBuilder svg, string name, double value) => Attribute(svg, name, Short(value));

    // A thousandth of a millimetre is finer than any screen or printer.
    private static string Short(double value)
    {
        if (!double.IsFinite(value)) throw new ArgumentException($"Every number of a scene is finite; one is {value}.", nameof(value));
        var rounded = Math.Round(value, 3);
        return rounded == 0 ? "0" : rounded.ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static void Escape(StringBuilder svg, string text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&': svg.Append("&amp;"); break;
                case '<': svg.Append("&lt;"); break;
                case '>': svg.Append("&gt;"); break;
                case '\r': svg.Append("&#13;"); break; // A bare one would be read back as a line feed.
                default: svg.Append((IsXml(rune.Value) ? rune : Rune.ReplacementChar).ToString()); break;
            }
        }
    }

    // Source: [XML10] production 2, Char.
    private static bool IsXml(int value) =>
        value is '\t' or '\n' or '\r' or (>= 0x20 and <= 0xD7FF) or (>= 0xE000 and <= 0xFFFD) or >= 0x10000;
}
