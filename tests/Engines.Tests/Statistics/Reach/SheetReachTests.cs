using CsCheck;
using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Reach;

namespace Slantwise.Engines.Tests.Statistics.Reach;

public sealed class SheetReachTests
{
    private static readonly double Low = Math.Log(.6 / .4), High = Math.Log(.9 / .1);

    private static readonly Gen<LevelOutlook?> AnyLevel = Gen.Select(Gen.Double[-4, 4], Gen.Double[.3, 1.5], Gen.Int[0, 5])
        .Select((mean, sd, dice) => dice == 0 ? (LevelOutlook?)null : new LevelOutlook(mean, sd));

    private static readonly Gen<PupilOutlook> AnyPupil = Gen.Select(Gen.Double[0, 1.2], AnyLevel.Array[4], (sd, levels) => new PupilOutlook(sd, levels));

    [Fact]
    public void Of_OneLevel_ChanceOfANormalInTheBand()
    {
        // By hand: Φ((hi − m)/s) − Φ((lo − m)/s) with m = 1, s = .8, all of it the pupil's own part.
        var reach = SheetReach.Of([new(.8, [new(1, .8)])], ReachBand.Usual);
        var expected = Normal.CDF(1, .8, High) - Normal.CDF(1, .8, Low);
        Assert.Equal(expected, reach.Pupils[0].IncludedFraction, .01);
        Assert.Equal(Normal.CDF(1, .8, High), reach.Pupils[0].StretchedFraction, .01);
        Assert.Equal(expected, reach.IncludedCount, .01);
    }

    [Theory]
    // By hand, nothing uncertain: .70 lies in the band, .95 is certain, .30 is too hard but stretches.
    [InlineData(.70, 1, 1)]
    [InlineData(.95, 0, 0)]
    [InlineData(.30, 0, 1)]
    public void Of_ACertainBelief_InOrOut(double chance, double included, double stretched)
    {
        var reach = SheetReach.Of([new(0, [new(Math.Log(chance / (1 - chance)), 0)])], ReachBand.Usual).Pupils[0];
        Assert.Equal(included, reach.IncludedFraction);
        Assert.Equal(stretched, reach.StretchedFraction);
    }

    [Fact]
    public void Of_AnyPupil_AsManyDrawsSay() => AnyPupil.Sample(pupil =>
    {
        // A plain second version: draw the pupil's part once and each level's own part, look at the chances.
        var random = new Random(17);
        double Draw() => Normal.Sample(random, 0, 1);
        const int count = 4000;
        var (included, stretched) = (0, 0);
        for (var i = 0; i < count; i++)
        {
            var own = Draw();
            var logits = pupil.Levels.OfType<LevelOutlook>().Select(l =>
                l.MeanLogits + Math.Min(pupil.AbilitySdLogits, l.SdLogits) * own + Math.Sqrt(Math.Max(0, l.SdLogits * l.SdLogits - pupil.AbilitySdLogits * pupil.AbilitySdLogits)) * Draw()).ToList();
            if (logits.Any(x => x >= Low && x <= High)) included++;
            if (logits.Any(x => x < High)) stretched++;
        }
        var reach = SheetReach.Of([pupil], ReachBand.Usual).Pupils[0];
        // Five standard errors of a share of 4,000, and a hundredth for the places of the pupil's part.
        Assert.Equal((double)included / count, reach.IncludedFraction, .05);
        Assert.Equal((double)stretched / count, reach.StretchedFraction, .05);
    }, iter: 60);

    [Fact]
    public void Of_OneLevelMore_NeverIncludesFewer() => Gen.Select(AnyPupil, AnyLevel).Sample((pupil, level) =>
    {
        var before = SheetReach.Of([pupil], ReachBand.Usual);
        var after = SheetReach.Of([pupil with { Levels = [.. pupil.Levels, level] }], ReachBand.Usual);
        Assert.True(after.IncludedCount >= before.IncludedCount - 1e-12);
        Assert.True(after.Pupils[0].StretchedFraction >= before.Pupils[0].StretchedFraction - 1e-12);
    });

    [Fact]
    public void Of_LevelsInAnotherOrder_SamePupils() => AnyPupil.Sample(pupil =>
    {
        var turned = pupil with { Levels = [.. pupil.Levels.Reverse()] };
        Assert.Equal(SheetReach.Of([pupil], ReachBand.Usual).IncludedCount, SheetReach.Of([turned], ReachBand.Usual).IncludedCount, 1e-12);
    });

    [Fact]
    public void Of_NothingAllowed_NeitherIncludedNorStretched() =>
        Assert.Equal(new PupilReach(0, 0, 0), SheetReach.Of([new(.5, [null, null])], ReachBand.Usual).Pupils[0]);

    [Fact]
    public void Of_TwoPupilsOfAHalf_RangeOfTheirSum()
    {
        // By hand: two fair coins give 0, 1, 2 with 1/4, 1/2, 1/4: the central 90 % run from 0 to 2. Three who are certain: all three.
        var half = new PupilOutlook(0, [new(Low, .5)]);
        var sure = new PupilOutlook(0, [new(1, 0)]);
        var wide = SheetReach.Of([half, half], new ReachBand(.6, 1 - 1e-12));
        Assert.Equal((0, 2), (wide.LeastCount, wide.MostCount));
        var narrow = SheetReach.Of([sure, sure, sure], ReachBand.Usual);
        Assert.Equal((3, 3), (narrow.LeastCount, narrow.MostCount));
    }

    [Fact]
    public void Of_ALevelOutOfEverybodysReach_NobodyNeedsIt()
    {
        var pupils = Enumerable.Range(0, 20).Select(_ => new PupilOutlook(.3, [new(1, .4), new(-6, .4)])).ToList();
        var reach = SheetReach.Of(pupils, ReachBand.Usual);
        Assert.True(reach.Levels[0].NeededFraction > .999);
        Assert.True(reach.Levels[1].NeededFraction < .001);
    }

    [Fact]
    public void Of_NoPupil_NobodyIncluded() => Assert.Equal(0, SheetReach.Of([], ReachBand.Usual).IncludedCount);

    [Fact]
    public void Of_PupilsWithOtherLevels_SaysWhatIsNeeded() =>
        Assert.Throws<ArgumentException>(() => SheetReach.Of([new(1, [new(0, 1)]), new(1, [])], ReachBand.Usual));

    [Theory]
    [InlineData(0, .9)]
    [InlineData(.9, .6)]
    [InlineData(.6, 1)]
    [InlineData(double.NaN, .9)]
    public void ReachBand_OutsideItsRange_SaysWhatIsAllowed(double lowFraction, double highFraction) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ReachBand(lowFraction, highFraction));
}
