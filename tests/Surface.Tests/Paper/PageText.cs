using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

/// <summary>The words of a page and the room they take.</summary>
internal static class PageText
{
    private const double MmPerPt = 25.4 / 72;

    public static IEnumerable<string> Words(this Scene page) => page.Shapes.OfType<Text>().Select(t => t.Content);

    /// <summary>All words without spaces, so that a line's end inside a name does not hide it.</summary>
    public static string Run(this Scene page) => string.Concat(page.Words()).Replace(" ", "");

    public static (double Left, double Top, double Right, double Bottom) Room(this Text text)
    {
        var width = TextMeasure.WidthMm(text.Content, text.SizePt, text.Weight, text.Spacing);
        var left = text.XMm - text.Anchor switch { TextAnchor.Middle => width / 2, TextAnchor.End => width, _ => 0 };
        var size = text.SizePt * MmPerPt;
        return (left, text.BaselineMm - TextMeasure.AscentFraction * size, left + width, text.BaselineMm + TextMeasure.DescentFraction * size);
    }

    /// <summary>The room of its ink, for digits and words without accents or tails as well as for those with.</summary>
    public static (double Left, double Top, double Right, double Bottom) InkRoom(this Text text)
    {
        var (left, _, right, _) = text.Room();
        var size = text.SizePt * MmPerPt;
        var hasTails = text.Content.Any(c => "gjpqy,;()ç".Contains(c));
        return (left, text.BaselineMm - 0.75 * size, right, text.BaselineMm + (hasTails ? 0.22 : 0.01) * size);
    }

    /// <summary>A line a text: place in millimetres, size, weight and words, top to bottom.</summary>
    public static string Listing(this Scene page) => string.Join('\n', page.Shapes.OfType<Text>()
        .OrderBy(t => t.BaselineMm).ThenBy(t => t.XMm)
        .Select(t => string.Create(CultureInfo.InvariantCulture,
            $"{t.BaselineMm,6:0.0} {t.XMm,6:0.0} {t.SizePt,3:0} {(t.Weight == TextWeight.Bold ? "bold   " : "regular")} {t.Content}")));
}
