using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Snapshooter.Xunit3;

namespace Slantwise.Engines.Tests.Drawing.Charts;

public sealed class DotsOfTenTests
{
    [Theory]
    [InlineData(0.42, 0.83, 4, 9)]
    [InlineData(0.3, 0.7, 3, 7)]
    [InlineData(0, 1, 0, 10)]
    [InlineData(0, 0, 0, 0)]
    public void TenthsOf_ARange_IsRoundedOutwards(double low, double high, int from, int to) =>
        Assert.Equal((from, to), DotsOfTen.TenthsOf(low, high));

    [Theory]
    [InlineData(0.64, 0.42, 0.83, 6)]
    [InlineData(0.65, 0.42, 0.83, 7)]
    [InlineData(0.96, 0.91, 0.99, 10)]
    // Rounded it would be 3, but the range ends at 2 tenths.
    [InlineData(0.2, 0.2, 0.2, 2)]
    public void AboutOf_AShare_IsTheNearestTenthOfItsRange(double about, double low, double high, int expected) =>
        Assert.Equal(expected, DotsOfTen.AboutOf(about, low, high));

    [Fact]
    public void Of_SixOfTenLikelyFourToNine_FillsSixAndBracketsFourToNine()
    {
        // By hand, dots of 10 mm: a gap of 2.4, so that the middle of the gap after dot n lies at 12.4 n − 1.2 mm.
        var scene = DotsOfTen.Of(.61, .42, .83, 10, false, "d");
        Assert.Equal(6, scene.Shapes.OfType<Disc>().Count(d => d is { StrokeMm: 0, Tone: Tone.Accent, RadiusMm: 5 }));
        Assert.Equal(4, scene.Shapes.OfType<Disc>().Count(d => d.StrokeMm > 0));
        var bracket = scene.Shapes.OfType<Line>().First();
        Assert.Equal((48.4, 110.4, false), (Math.Round(bracket.X1Mm, 9), Math.Round(bracket.X2Mm, 9), bracket.IsDashed));
    }

    [Fact]
    public void Of_Muted_IsToldByFormAndNotByColourAlone()
    {
        var scene = DotsOfTen.Of(.61, .42, .83, 10, true, "d");
        Assert.Equal(10, scene.Shapes.OfType<Disc>().Count(d => d.StrokeMm > 0));
        Assert.Equal(6, scene.Shapes.OfType<Disc>().Count(d => d is { StrokeMm: 0, RadiusMm: 2.5 }));
        Assert.True(scene.Shapes.OfType<Line>().First().IsDashed);
        Assert.DoesNotContain(scene.Shapes, s => s.Tone == Tone.Accent);
    }

    [Fact]
    public void Of_ImpossibleNumbers_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DotsOfTen.Of(.5, 0.6, 0.5, 4, false, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => DotsOfTen.Of(.4, 0.5, 0.6, 4, false, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => DotsOfTen.Of(double.NaN, 0, 1, 4, false, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => DotsOfTen.Of(.5, 0, 1, 0, false, "d"));
    }

    [Fact]
    public void Of_AnyRange_StaysInsideItsPictureAndTheFillEndsInsideTheBracket() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool).Sample((a, b, c, isMuted) =>
    {
        double[] sorted = [.. new[] { a, b, c }.Order()];
        var scene = DotsOfTen.Of(sorted[1], sorted[0], sorted[2], 3, isMuted, "d");
        var (low, high) = DotsOfTen.TenthsOf(sorted[0], sorted[2]);
        var full = scene.Shapes.OfType<Disc>().Count(d => d.StrokeMm == 0);
        return low <= full && full <= high
            && scene.Shapes.OfType<Disc>().All(d => d.XMm - d.RadiusMm - d.StrokeMm / 2 >= -1e-9 && d.XMm + d.RadiusMm + d.StrokeMm / 2 <= scene.WidthMm + 1e-9)
            && scene.Shapes.OfType<Line>().All(l => Math.Min(l.X1Mm, l.X2Mm) - l.WidthMm / 2 >= -1e-9 && Math.Max(l.X1Mm, l.X2Mm) + l.WidthMm / 2 <= scene.WidthMm + 1e-9
                && Math.Max(l.Y1Mm, l.Y2Mm) <= scene.HeightMm + 1e-9);
    });

    [Fact]
    public void Of_SevenOfTen_MatchesApproved() => Snapshot.Match(SvgWriter.Write(DotsOfTen.Of(.68, .42, .83, 4, false, "About 7 of 10. Likely 4 to 9.")));

    [Fact]
    public void Of_SevenOfTenMostlyAssumed_MatchesApproved() => Snapshot.Match(SvgWriter.Write(DotsOfTen.Of(.68, .42, .83, 4, true, "About 7 of 10. Likely 4 to 9, mostly assumption.")));
}
