using CsCheck;
using Slantwise.Engines.Statistics.Reach;

namespace Slantwise.Engines.Tests.Statistics.Reach;

public sealed class ReachAdditionTests
{
    private static readonly Gen<PupilOutlook> AnyPupil = Gen.Select(
        Gen.Double[.2, 1], Gen.Select(Gen.Double[-4, 4], Gen.Double[1, 1.5]).Select((mean, sd) => (LevelOutlook?)new LevelOutlook(mean, sd)).Array[6],
        (sd, levels) => new PupilOutlook(sd, levels));

    [Fact]
    public void Best_TwoLeftOutAndOneLevelForBoth_FindsIt()
    {
        // By hand: the sheet's level suits the first pupil alone; the second candidate suits the other two.
        PupilOutlook Of(double sheet, double first, double second) => new(0, [new(sheet, 0), new(first, 0), new(second, 0)]);
        var best = ReachAddition.Best([Of(1, 5, 5), Of(-3, -2, 1), Of(-4, 1, 1.2)], 1, 1, ReachBand.Usual);
        Assert.Equal([1], best.Candidates);
        Assert.Equal(3, best.IncludedCount, 1e-12);
        Assert.True(best.IsExact);
    }

    [Fact]
    public void Best_EverybodyIncluded_AddsNothing() =>
        Assert.Empty(ReachAddition.Best([new(0, [new(1, 0), new(1, 0)])], 1, 2, ReachBand.Usual).Candidates);

    [Fact]
    public void Best_OfAnyPupils_AsGoodAsTryingEveryPair() => AnyPupil.Array[1, 6].Sample(pupils =>
    {
        // A plain second version: the reach of a sheet with each pair of the four candidates.
        var most = (
            from a in Enumerable.Range(2, 4)
            from b in Enumerable.Range(a + 1, 5 - a)
            select SheetReach.Of([.. pupils.Select(p => p with { Levels = [p.Levels[0], p.Levels[1], p.Levels[a], p.Levels[b]] })], ReachBand.Usual).IncludedCount).Max();
        var best = ReachAddition.Best(pupils, 2, 2, ReachBand.Usual);
        // A level that gains less than a twentieth of a pupil is not taken.
        Assert.InRange(best.IncludedCount, most - .1, most + 1e-9);
    });

    [Fact]
    public void Best_OfManyCandidates_SaysThatNotAllWereTried()
    {
        var levels = Enumerable.Range(0, 14).Select(i => (LevelOutlook?)new LevelOutlook(i - 7, .5)).ToArray();
        Assert.False(ReachAddition.Best([new(.3, levels)], 0, 2, ReachBand.Usual).IsExact);
    }

    [Fact]
    public void Best_NothingMayBeAdded_SaysWhatIsAllowed() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachAddition.Best([], 0, 0, ReachBand.Usual));
}
