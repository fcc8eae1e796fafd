using CsCheck;
using Slantwise.Engines.Planning.Blocks;

namespace Slantwise.Engines.Tests.Planning.Blocks;

public sealed class BlockPlanTests
{
    // By hand: 3 + 10 + 2 + 30 + 5 = 50 of 50 minutes, a third of the activity waited.
    private static readonly PlannedBlock[] Blocks =
    [
        new(TimeCategory.Management, 180), new(TimeCategory.Instruction, 600), new(TimeCategory.Transition, 120),
        new(TimeCategory.Activity, 1800, 1 / 3.0), new(TimeCategory.Instruction, 300),
    ];

    [Fact]
    public void Of_FiftyMinutes_LaysThemEndToEnd()
    {
        var plan = BlockPlan.Of(Blocks, 3000, 0.2, []);
        Assert.Equal([0, 180, 780, 900, 2700], plan.Blocks.Select(b => b.StartS));
        Assert.Equal([180, 780, 900, 2700, 3000], plan.Blocks.Select(b => b.EndS));
        // Talk of 15 minutes overruns by 3: 2 after the first, 3 after the second.
        Assert.Equal([180, 900, 1020, 2820, 3180], plan.Blocks.Select(b => b.OverrunEndS));
        Assert.Equal((3000, 0, 180), (plan.PlannedS, plan.LeftS, plan.OverrunS));
        Assert.Equal(1200, plan.ActivityS, 1e-9);
        // 3 of 30 minutes of the activity block go, so a tenth of both kinds in it.
        Assert.Equal(1080, plan.OverrunActivityS, 1e-9);
        Assert.Equal([0.06, 0.04, 0.3, 0.4, 0.2], plan.Shares.Select(s => Math.Round(s.ShareFraction, 12)));
        Assert.Equal([0.06, 0.04, 0.36, 0.36, 0.18], plan.Shares.Select(s => Math.Round(s.OverrunFraction, 12)));
    }

    [Fact]
    public void Of_OrientationValues_AreHeldBesideAndTheOverrunIsInverted()
    {
        var plan = BlockPlan.Of(Blocks, 3000, 0.2, [new(TimeCategory.Activity, 0.36, 1, "a textbook"), new(TimeCategory.Instruction, 0.1, 0.25, "another")]);
        Assert.False(plan.Shares.Single(s => s.Category == TimeCategory.Activity).IsOutside);
        Assert.True(plan.Shares.Single(s => s.Category == TimeCategory.Instruction).IsOutside);
        Assert.Equal("a textbook", plan.Shares.Single(s => s.Category == TimeCategory.Activity).Orientation!.Value.Source);
        // Exactly the overrun above brings activity down to .36 of the lesson.
        Assert.Equal(0.2, plan.MostOverrunFraction!.Value, 1e-12);
        Assert.Equal(0, BlockPlan.Of(Blocks, 3000, 0.2, [new(TimeCategory.Activity, 0.5, 1, "a textbook")]).MostOverrunFraction);
        Assert.Null(BlockPlan.Of([new(TimeCategory.Activity, 600)], 600, 0.2, []).MostOverrunFraction);
    }

    [Fact]
    public void Of_TimeLeftOver_IsUsedUpFirst()
    {
        var plan = BlockPlan.Of(Blocks, 3100, 0.1, []);
        Assert.Equal((100, 90), (plan.LeftS, plan.OverrunS));
        Assert.Equal(1200, plan.OverrunActivityS, 1e-9);
    }

    [Fact]
    public void Of_AnyBlocks_SharesAddUpAndActivityNeverGrowsWithTalk() => Gen.Select(
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 1200], Gen.Double[0, 1]).Array[1, 10], Gen.Double[0, 1]).Sample((rows, overrun) =>
    {
        var blocks = rows.Select(r => new PlannedBlock((TimeCategory)r.Item1, r.Item2, r.Item1 == 4 ? r.Item3 : 0)).ToArray();
        var lessonS = blocks.Sum(b => b.PlannedS) + 60;
        var plan = BlockPlan.Of(blocks, lessonS, overrun, []);
        Assert.Equal(1, plan.Shares.Sum(s => s.ShareFraction), 1e-9);
        Assert.InRange(plan.OverrunActivityS, 0, plan.ActivityS);
        Assert.True(BlockPlan.Of(blocks, lessonS, overrun + 0.1, []).OverrunActivityS <= plan.OverrunActivityS + 1e-9);
        if (plan.MostOverrunFraction is > 0 and < 2 and var most && plan.ActivityS > 0)
            Assert.Equal(0, BlockPlan.Of(blocks, lessonS, most, []).OverrunActivityS, 1e-6);
    });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentException>(() => BlockPlan.Of([], 600, 0, []));
        Assert.Throws<ArgumentException>(() => BlockPlan.Of(Blocks, 3000, 0, [new(TimeCategory.Activity, 0, 1, ""), new(TimeCategory.Activity, 0, 1, "")]));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockPlan.Of([new(TimeCategory.Activity, 0)], 600, 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockPlan.Of(Blocks, 0, 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockPlan.Of(Blocks, 600, -0.1, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockPlan.Of(Blocks, 600, 0, [new(TimeCategory.Activity, 0.6, 0.5, "")]));
    }
}
