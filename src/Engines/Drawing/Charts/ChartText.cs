using System.Globalization;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>Sizes and room of text in charts, without measuring a font.</summary>
internal static class ChartText
{
    public const double LabelPt = 9;
    public const double SmallPt = 8;

    /// <summary>1 pt is 1/72 inch of 25.4 mm.</summary>
    public const double MmPerPt = 25.4 / 72;

    // Running text of common sans faces is about half as wide as its type size.
    private const double MeanWidthEm = 0.5;

    /// <summary>How wide a text will be, roughly.</summary>
    public static double WidthMm(string text, double sizePt) =>
        new StringInfo(text).LengthInTextElements * MeanWidthEm * sizePt * MmPerPt;

    /// <summary>The text, or as much of its beginning as there is room for, with an ellipsis.</summary>
    public static string Fitting(string text, double sizePt, double roomMm)
    {
        if (WidthMm(text, sizePt) <= roomMm) return text;
        var info = new StringInfo(text);
        var room = Math.Max(1, (int)(roomMm / (MeanWidthEm * sizePt * MmPerPt)) - 1);
        return info.LengthInTextElements <= room ? text : info.SubstringByTextElements(0, room).TrimEnd() + "…";
    }

    /// <summary>Checks the width every chart is given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number.</exception>
    public static void CheckWidth(double widthMm)
    {
        if (!(widthMm >= 40 && double.IsFinite(widthMm)))
            throw new ArgumentOutOfRangeException(nameof(widthMm), widthMm, "A chart is at least 40 mm wide.");
    }
}
