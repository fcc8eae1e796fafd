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
        // By hand: ink 1, darkness .6 / .5 / 1.5 = .8, stroke 2/3, sharpness 1 / 1.2 = 5/6, nothing around, mean .1 / .4 = .25, 5/9, and no group.
        var traits = Blank with { InkFraction = .25, MeanDarknessFraction = .1, UpperDarknessFraction = .6, StrokeMm = 2, SharpnessFraction = 1 };
        Assert.Equal([1, 1, .8, 2 / 3.0, 5 / 6.0, 0, .25, 5 / 9.0, 0], MarkModel.Terms(traits).Select(t => Math.Round(t, 12)), (a, b) => Math.Abs(a - b) < 1e-9);
        var model = new MarkModel([-2, 1, 1, 0, 0, 0, 4, 0, 0]);
        Assert.Equal(1 / (1 + Math.Exp(-.8)), model.MarkedFraction(traits), 1e-12);
    }

    [Fact]
    public void Terms_OfAnyTraits_LieBetweenZeroAndOne() => Gen.Double[-1, 20].Array[12].Sample(v =>
    {
        var traits = new MarkTraits("", v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], 1, 1);
        Assert.All(MarkModel.Terms(traits), t => Assert.InRange(t, 0, 1));
    }, iter: 300);

    [Fact]
    public void Constructor_TooFewCoefficients_Throws() => Assert.Throws<ArgumentException>(() => new MarkModel([1, 2]));
}
