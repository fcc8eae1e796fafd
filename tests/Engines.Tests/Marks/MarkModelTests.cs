using CsCheck;
using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class MarkModelTests
{
    private static readonly MarkTraits Blank = new("A", 0, 0, .02, .5, 1, 0, .05, 0, .12, 1, .02, .9, .85, 6);

    [Fact]
    public void Read_Blank_Empty() => Assert.Equal(MarkVerdict.Empty, MarkModel.Fitted.Read(Blank).Verdict);

    [Fact]
    public void Read_BlankWithItsOutlineHidden_Doubtful() =>
        Assert.Equal(MarkVerdict.Doubtful, MarkModel.Fitted.Read(Blank with { OutlineSeenFraction = .3 }).Verdict);

    [Fact]
    public void Read_ATick_Marked() => Assert.Equal(MarkVerdict.Marked,
        MarkModel.Fitted.Read(Blank with { InkFraction = .2, MeanDarknessFraction = .12, UpperDarknessFraction = .6, StrokeMm = 5, SharpnessFraction = 1 }).Verdict);

    [Fact]
    public void MarkedFraction_OfTermsByHand_IsTheLogistic()
    {
        // By hand: grain takes .03 of darkness and .06 of sharpness; ink 1, darkness (.63 - .03) / .5 / 1.2 = 1, sharpness .5, nothing around, no filling,
        // at the middle with 2 mm of 3: 2/3, with edges 1/3, with darkness 1; no group; edges enough not to be smooth.
        var traits = Blank with { InkFraction = .25, UpperDarknessFraction = .63, StrokeMm = 2, SharpnessFraction = .56 };
        Assert.Equal([1, 1, 1, .5, 0, 0, 2 / 3.0, 1 / 3.0, 1, 0, 0], MarkModel.Terms(traits).Select(t => Math.Round(t, 12)), (a, b) => Math.Abs(a - b) < 1e-9);
        var model = new MarkModel([-2, 1, 1, 0, 0, 0, 1.2, 0, 0, 0, 0]);
        Assert.Equal(1 / (1 + Math.Exp(-.8)), model.MarkedFraction(traits), 1e-12);
    }

    [Fact]
    public void Read_ARingOnTheOutline_NotEmpty() => Assert.NotEqual(MarkVerdict.Empty, MarkModel.Fitted.Read(Blank with { AroundFraction = .5 }).Verdict);

    [Fact]
    public void Read_InkThatOnlyPokesIn_NotMarked() => Assert.NotEqual(MarkVerdict.Marked, MarkModel.Fitted.Read(Blank with
    {
        InkFraction = .1, MeanDarknessFraction = .1, UpperDarknessFraction = .6, StrokeMm = 2, SharpnessFraction = 1, NearestFraction = .7,
    }).Verdict);

    [Fact]
    public void Read_AShadowOverTheField_Doubtful() => Assert.Equal(MarkVerdict.Doubtful, MarkModel.Fitted.Read(Blank with
    {
        InkFraction = .98, MeanDarknessFraction = .23, UpperDarknessFraction = .28, StrokeMm = 6, SharpnessFraction = .16, AroundFraction = .75,
    }).Verdict);

    [Fact]
    public void Terms_OfAnyTraits_LieBetweenZeroAndOne() => Gen.Double[-1, 20].Array[12].Sample(v =>
    {
        var traits = new MarkTraits("", v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], 1, 1);
        Assert.All(MarkModel.Terms(traits), t => Assert.InRange(t, 0, 1));
    }, iter: 300);

    [Fact]
    public void Constructor_TooFewCoefficients_Throws() => Assert.Throws<ArgumentException>(() => new MarkModel([1, 2]));
}
