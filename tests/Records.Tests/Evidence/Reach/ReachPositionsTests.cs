using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Reach;

namespace Slantwise.Records.Tests.Evidence.Reach;

public sealed class ReachPositionsTests
{
    [Fact]
    public void Of_PupilsAndLevels_DistancesAreWhatIsBelieved()
    {
        // By hand: pupils at 1 and −1, levels at −.5, 0 and 2; the second pupil is not allowed the last.
        double[] levels = [-.5, 0, 2];
        var at = ReachPositions.Of(Reach(levels, (1, []), (-1, [2])));
        Assert.Equal([1.0, -1.0], at.PupilsLogits.Select(p => Math.Round(p!.Value, 6)));
        Assert.Equal(levels, at.LevelsLogits.Select(l => Math.Round(l!.Value, 6)));
        Assert.All(at.SdsLogits, sd => Assert.Equal(.5, sd, 1e-9));
    }

    [Fact]
    public void Of_WhatIsAllowedForNobody_HasNoPlace()
    {
        var at = ReachPositions.Of(Reach([0, 1], (.5, [1]), (0, [0, 1])));
        Assert.NotNull(at.LevelsLogits[0]);
        Assert.Null(at.LevelsLogits[1]);
        Assert.Null(at.PupilsLogits[1]);
    }

    private static TaskReach Reach(double[] levels, params (double At, int[] Barred)[] pupils)
    {
        var outlooks = pupils.Select(p => new PupilOutlook(.3, [.. levels.Select((l, j) => p.Barred.Contains(j) ? (LevelOutlook?)null : new LevelOutlook(p.At - l, .5))])).ToList();
        var whole = SheetReach.Of(outlooks, ReachBand.Usual);
        return new TaskReach(
            Guid.Empty, [.. outlooks.Select((o, i) => new ReachedPupil(Guid.Empty, $"P{i}", whole.Pupils[i], o.Levels, 5, false))], whole.Levels, whole, null, 10);
    }
}
