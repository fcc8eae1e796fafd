using System.Globalization;
using Slantwise.Engines.Drawing;

namespace Slantwise.Engines.Tests.Drawing;

public class PrintColoursTests
{
    // 7:1 for text (AAA), 3:1 for what is no text: [WCAG22] 1.4.6 and 1.4.11.
    [Theory]
    [InlineData(Tone.Ink, 7)]
    [InlineData(Tone.Muted, 7)]
    [InlineData(Tone.Accent, 7)]
    [InlineData(Tone.Second, 7)]
    [InlineData(Tone.Caution, 7)]
    [InlineData(Tone.Faint, 3)]
    public void HexOf_ToneOnPaper_HasContrast(Tone tone, double leastRatio) =>
        Assert.True(1.05 / (Luminance(tone) + 0.05) >= leastRatio);

    [Fact]
    public void HexOf_SoftTones_CarryInk()
    {
        foreach (var soft in (Tone[])[Tone.AccentSoft, Tone.SecondSoft])
            Assert.True((Luminance(soft) + 0.05) / (Luminance(Tone.Ink) + 0.05) >= 7);
    }

    [Fact]
    public void HexOf_NoTone_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => PrintColours.HexOf((Tone)99));

    // Relative luminance as [WCAG22] defines it.
    private static double Luminance(Tone tone)
    {
        var hex = PrintColours.HexOf(tone);
        double Channel(int at)
        {
            var c = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }
}
