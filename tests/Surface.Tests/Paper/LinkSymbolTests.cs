using Slantwise.Engines.Drawing;
using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

public sealed class LinkSymbolTests
{
    [Theory]
    [InlineData(42)]
    [InlineData(300)]
    [InlineData(LinkSymbol.MostLength)]
    public void Of_AnAddress_IsReadBackByAnotherDecoder(int length)
    {
        var address = ("http://192.0.2.17:5080/floor/#ticket=" + string.Concat(Enumerable.Repeat("aB3_-", 200)))[..length];
        using var file = new PrintedFile([LinkSymbol.Of(address, 60, "A link.")]);
        Tool.Run("pdftoppm", "-r", "200", "-gray", "-png", "-singlefile", file.Name, file.Beside("page"));
        Assert.Equal(address, Tool.Run("zbarimg", "--quiet", "--raw", file.Beside("page.png")).TrimEnd('\n'));
    }

    [Fact]
    public void Of_AnAddress_StandsOnItsOwnGroundWithFourModulesOfWhite()
    {
        // By hand: 42 bytes at error correction M take version 3, 29 modules a side; with 4 of white on either side 37. Source: [ISO18004] table 7.
        var scene = LinkSymbol.Of("http://192.168.100.17:5080/floor/#join=K7M"[..42], 37, "A link.");
        Assert.Equal(new Box(0, 0, 37, 37, Tone.Ground), scene.Shapes[0]);
        var steps = Assert.IsType<Outline>(scene.Shapes[1]).Steps.Where(s => s.Kind != OutlineStepKind.Close).ToList();
        Assert.Equal([4.0, 4.0, 33.0, 33.0], new[] { steps.Min(s => s.XMm), steps.Min(s => s.YMm), steps.Max(s => s.XMm), steps.Max(s => s.YMm) }.Select(v => Math.Round(v, 9)));
    }

    [Theory]
    [InlineData(0, 60)]
    [InlineData(LinkSymbol.MostLength + 1, 60)]
    [InlineData(40, 0)]
    [InlineData(40, double.NaN)]
    public void Of_NoAddressOrNoRoom_IsRefused(int length, double sideMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LinkSymbol.Of(new string('a', length), sideMm, ""));
}
