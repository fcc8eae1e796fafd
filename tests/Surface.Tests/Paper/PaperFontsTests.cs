using Slantwise.Paper;

namespace Slantwise.Surface.Tests.Paper;

public class PaperFontsTests
{
    // A TrueType file begins with 00 01 00 00: OpenType 1.9, "Organization of an OpenType font".
    [Fact]
    public void Regular_AndBold_AreTwoTrueTypeFiles()
    {
        Assert.Equal([0, 1, 0, 0], PaperFonts.Regular[..4].ToArray());
        Assert.Equal([0, 1, 0, 0], PaperFonts.Bold[..4].ToArray());
        Assert.False(PaperFonts.Regular.Span.SequenceEqual(PaperFonts.Bold.Span));
    }

    [Fact]
    public void Licence_TravelsWithThem_IsTheOpenFontLicense() => Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", PaperFonts.Licence);

    [Theory]
    [InlineData("Łukasz Ñandú-O'Brien", true)]
    [InlineData("e\u0301", true)]
    [InlineData("王小明", false)]
    public void Has_Names_KnowsItsLetters(string name, bool expected) => Assert.Equal(expected, PaperFonts.Has(name));
}
