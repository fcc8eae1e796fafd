using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

public class TextMeasureTests
{
    private static readonly Gen<string> AnyText = Gen.Char["abc défg Ñ ijklmnop  qrstu"].Array[0, 80].Select(c => new string(c));

    [Fact]
    public void Lines_AnyText_FitTheRoomAndLoseNothing() =>
        Gen.Select(AnyText, Gen.Double[6, 120], Gen.Double[8, 30], Gen.Enum<TextWeight>()).Sample((text, widthMm, sizePt, weight) =>
        {
            var lines = TextMeasure.Lines(text, widthMm, sizePt, weight);
            Assert.Equal(text.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
            Assert.All(lines, line => Assert.True(TextMeasure.WidthMm(line, sizePt, weight) <= widthMm || line.Length == 1));
        });

    [Fact]
    public void WidthMm_AnyText_GrowsWithTheSize() => Gen.Select(AnyText, Gen.Double[5, 40], Gen.Enum<TextWeight>()).Sample((text, sizePt, weight) =>
        Assert.Equal(2 * TextMeasure.WidthMm(text, sizePt, weight), TextMeasure.WidthMm(text, 2 * sizePt, weight), 1e-6));

    [Fact]
    public void WidthMm_Bold_IsWider() => Assert.True(
        TextMeasure.WidthMm("balance", 12, TextWeight.Bold) > TextMeasure.WidthMm("balance", 12));

    [Fact]
    public void Lines_ShortWords_BreakAtSpaces() => Assert.Equal(["one two", "three"], TextMeasure.Lines("  one two\nthree ", TextMeasure.WidthMm("one two t", 12), 12));

    [Fact]
    public void Lines_NoInk_AreNone() => Assert.Empty(TextMeasure.Lines(" \n ", 50, 12));

    // A letter and its accent apart are one letter on paper.
    [Fact]
    public void WidthMm_AccentApart_AsJoined() => Assert.Equal(TextMeasure.WidthMm("\u00e9", 12), TextMeasure.WidthMm("e\u0301", 12));
}
