using System.Globalization;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>How wide words will be, roughly, without measuring a font.</summary>
internal static class FittingText
{
    private const double MmPerPt = 25.4 / 72;

    // Running text of common sans faces is about half as wide as its type size; a little more is safe.
    private const double MeanWidthEm = 0.51;

    public static double WidthMm(string words, double sizePt) => new StringInfo(words).LengthInTextElements * MeanWidthEm * sizePt * MmPerPt;
}
