using System.Globalization;
using Slantwise.Engines.Drawing;
using SkiaSharp;

namespace Slantwise.Paper;

/// <summary>How much room text takes in the printed fonts, and where to break it.</summary>
public static class TextMeasure
{
    internal const double MmPerPt = 25.4 / 72;

    // Measured large and scaled down: the same at every size, as the unhinted type on paper is.
    private const float MeasuredSize = 1000;

    // A font is not for two threads at once, and costly to make for every word.
    private static readonly ThreadLocal<SKFont> Regular = new(() => FontOf(TextWeight.Regular, MeasuredSize));
    private static readonly ThreadLocal<SKFont> Bold = new(() => FontOf(TextWeight.Bold, MeasuredSize));

    /// <summary>Height of a text's tallest letters over its baseline, accents included, as a fraction of its size.</summary>
    public const double AscentFraction = 0.95;

    /// <summary>Depth of a text's lowest letters under its baseline, as a fraction of its size.</summary>
    public const double DescentFraction = 0.25;

    /// <summary>The width of one line.</summary>
    /// <param name="text">Any text; breaks count as spaces.</param>
    /// <param name="sizePt">Type size, more than 0.</param>
    /// <param name="weight">How strong the type is.</param>
    /// <param name="spacing">White space added between letters and words.</param>
    /// <returns>0 for an empty text.</returns>
    public static double WidthMm(string text, double sizePt, TextWeight weight = TextWeight.Regular, TextSpacing spacing = default)
    {
        var font = (weight == TextWeight.Bold ? Bold : Regular).Value!;
        var line = Printable.Of(text);
        var widthFraction = font.MeasureText(line) / MeasuredSize;
        if (spacing != default && line.Length > 0)
            widthFraction += (font.CountGlyphs(line) - 1) * (float)spacing.LetterFraction + line.Count(c => c == ' ') * (float)spacing.WordFraction;
        return widthFraction * sizePt * MmPerPt;
    }

    /// <summary>A text broken into lines at its spaces; a word wider than a line is broken between letters.</summary>
    /// <param name="text">Any text; runs of white space count as one space.</param>
    /// <param name="widthMm">The room for a line, more than 0.</param>
    /// <param name="sizePt">Type size, more than 0.</param>
    /// <param name="weight">How strong the type is.</param>
    /// <param name="spacing">White space added between letters and words.</param>
    /// <returns>Lines without spaces at their ends, none for a text without ink. None is wider than the room, unless a single letter is.</returns>
    public static IReadOnlyList<string> Lines(
        string text, double widthMm, double sizePt, TextWeight weight = TextWeight.Regular, TextSpacing spacing = default)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Printable.Of(text).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (WidthMm(longer, sizePt, weight, spacing) <= widthMm)
            {
                line = longer;
                continue;
            }
            if (line.Length > 0) lines.Add(line);
            var pieces = Pieces(word, widthMm, sizePt, weight, spacing);
            lines.AddRange(pieces.SkipLast(1));
            line = pieces[^1];
        }
        if (line.Length > 0) lines.Add(line);
        return lines;
    }

    /// <summary>Where each glyph of a line begins, in the font's units.</summary>
    internal static float[] PlacesOf(string line, SKFont font, TextSpacing spacing)
    {
        var places = font.GetGlyphPositions(line).Select(p => p.X).ToArray();
        var at = 0;
        var added = 0.0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (at == places.Length) break;
            places[at++] += (float)added;
            added += font.Size * (spacing.LetterFraction + (rune.Value == ' ' ? spacing.WordFraction : 0));
        }
        return places;
    }

    internal static SKFont FontOf(TextWeight weight, float size) => new(PaperFonts.Of(weight), size)
    {
        Subpixel = true,
        LinearMetrics = true,
        Hinting = SKFontHinting.None,
        Edging = SKFontEdging.Antialias,
    };

    private static List<string> Pieces(string word, double widthMm, double sizePt, TextWeight weight, TextSpacing spacing)
    {
        if (WidthMm(word, sizePt, weight, spacing) <= widthMm) return [word];
        var pieces = new List<string>();
        var piece = "";
        var letters = StringInfo.GetTextElementEnumerator(word);
        while (letters.MoveNext())
        {
            var letter = letters.GetTextElement();
            if (piece.Length > 0 && WidthMm(piece + letter, sizePt, weight, spacing) > widthMm)
            {
                pieces.Add(piece);
                piece = "";
            }
            piece += letter;
        }
        pieces.Add(piece);
        return pieces;
    }
}
