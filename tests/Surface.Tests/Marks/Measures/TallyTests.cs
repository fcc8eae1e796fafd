using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Hands;

namespace Slantwise.Surface.Tests.Marks.Measures;

public class TallyTests
{
    [Fact]
    public void AddField_EachCombination_IsCountedOnce()
    {
        var (tick, none, bridge) = (new FieldTruth(MarkStyle.Tick, Trouble.None), new FieldTruth(MarkStyle.None, Trouble.RubbedOut), new FieldTruth(MarkStyle.Bridge, Trouble.None));
        var tally = new Tally();
        foreach (var verdict in Enum.GetValues<MarkVerdict>())
            foreach (var truth in new[] { tick, none, bridge }) tally.AddField(truth, verdict);
        // By hand: of two fields with a truth and three verdicts each, two right, one false mark, one missed mark, two doubtful; three open ones apart.
        Assert.Equal((6, 3, 2, 1, 1), (tally.Fields, tally.Marked, tally.Doubtful, tally.FalseMarks, tally.MissedMarks));
        Assert.Equal((3, 1, 2), (tally.Open, tally.OpenDoubtful, tally.SilentWrong));
        Assert.Equal(1.0 / 3, tally.DoubtfulFraction, 1e-12);
    }

    [Fact]
    public void Add_ChancesOverTheBins_FallWhereTheyBelong()
    {
        var bins = ReliabilityBin.Usual();
        foreach (var (chance, isMarked) in new[] { (0.0, false), (.00009, true), (.5, true), (.55, false), (1.0, true) }) ReliabilityBin.Add(bins, chance, isMarked);
        Assert.Equal((2, 1), (bins[0].Fields, bins[0].Marked));
        var half = Assert.Single(bins, b => b is { FromFraction: .5 });
        Assert.Equal((2, 1), (half.Fields, half.Marked));
        Assert.Equal(.525, half.MeanFraction, 1e-12);
        Assert.Equal((1, 1), (bins[^1].Fields, bins[^1].Marked));
        Assert.Equal(5, bins.Sum(b => b.Fields));
    }
}
