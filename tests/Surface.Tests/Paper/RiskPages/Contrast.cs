using System.Globalization;

namespace Slantwise.Surface.Tests.Paper.RiskPages;

/// <summary>How far two colours are apart in lightness, written here from the published definitions and from nothing of ours.</summary>
/// <remarks>Source: [WCAG22] "relative luminance" (with 0.04045, as corrected in 2021) and "contrast ratio".</remarks>
internal static class Contrast
{
    /// <summary>The least for text, success criterion 1.4.3.</summary>
    public const double TextRatio = 4.5;

    /// <summary>The least for what has to be seen to be used, success criterion 1.4.11.</summary>
    public const double LineRatio = 3;

    public static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    public static double Luminance(string hex)
    {
        var (r, g, b) = Channels(hex);
        return 0.2126 * Linear(r) + 0.7152 * Linear(g) + 0.0722 * Linear(b);
    }

    /// <summary>A colour as a grey printer shows it: by luma, which is another mean than luminance.</summary>
    /// <remarks>The weights of ITU-R BT.601, from memory; poppler and many drivers use them.</remarks>
    public static string Grey(string hex)
    {
        var (r, g, b) = Channels(hex);
        var grey = (int)Math.Round(0.299 * r + 0.587 * g + 0.114 * b);
        return $"#{grey:x2}{grey:x2}{grey:x2}";
    }

    private static (int R, int G, int B) Channels(string hex)
    {
        int At(int i) => int.Parse(hex.AsSpan(i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return (At(1), At(3), At(5));
    }

    private static double Linear(int channel)
    {
        var share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
