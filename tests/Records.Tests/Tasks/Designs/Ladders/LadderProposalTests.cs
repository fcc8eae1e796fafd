using CsCheck;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Tasks.Designs.Ladders;

public sealed class LadderProposalTests
{
    private static readonly IReadOnlyList<TaskDesign> Designs = TaskLibrary.Designs;
    private static readonly TaskDesign OneFoot = Library("one-foot-balance");

    // Any task of the library, any kind, any part of its key factor and of up to two others, any number of levels.
    private static readonly Gen<(TaskDesign Design, LadderPlan Plan)> Any =
        from at in Gen.Int[0, Designs.Count - 1]
        let design = Designs[at]
        from kind in Gen.Enum<LadderKind>()
        from count in Gen.Int[LadderPlan.LevelCountLeast, LadderPlan.LevelCountMost]
        from helping in Gen.Int[0, LadderPlan.SupportingCountMost]
        from ends in Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Array[3]
        let keys = design.Factors.OrderBy(f => f.Role).Take(1 + helping).ToList()
        let spans = keys.Select((f, i) => Span(f, ends[i].Item1, ends[i].Item2)).ToList()
        select (design, new LadderPlan(kind, spans[0], [.. spans.Skip(1)], count));

    [Fact]
    public void Of_AnyPlan_StaysInItsSpansAndHasNoTwoAlike() => Any.Sample(asked =>
    {
        var levels = LadderProposal.Of(asked.Design, asked.Plan).Levels.Select(l => l.Level).ToList();
        Assert.InRange(levels.Count, 1, asked.Plan.LevelCount);
        for (var i = 0; i < levels.Count; i++)
        {
            Assert.True(asked.Design.IsOnGrid(levels[i]) || asked.Design.Levels.Contains(levels[i]));
            foreach (var span in SpansOf(asked.Plan)) Assert.InRange(PlaceOf(asked.Design, span.FactorKey, levels[i]), span.First, span.Last);
            for (var j = 0; j < i; j++) Assert.NotEmpty(asked.Design.Moved(levels[j], levels[i]));
        }
        Assert.Equal(levels.Count, levels.Select(l => l.Id).Distinct().Count());
    });

    [Fact]
    public void Of_ClassicalPlan_MovesTheKeyFactorAloneAndNeverBack() => Any.Sample(asked =>
    {
        var proposal = LadderProposal.Of(asked.Design, asked.Plan with { Kind = LadderKind.Classical });
        foreach (var level in proposal.Levels.Skip(1))
        {
            var move = Assert.Single(level.Moves);
            Assert.Equal(asked.Plan.Key.FactorKey, move.FactorKey);
            Assert.True(move.By > 0);
        }
        Assert.Equal(Math.Min(asked.Plan.LevelCount, asked.Plan.Key.StepCount + 1), proposal.Levels.Count);
    });

    [Fact]
    public void Of_CumulativePlan_AddsOneThingAndNeverEases() => Any.Sample(asked =>
    {
        var proposal = LadderProposal.Of(asked.Design, asked.Plan with { Kind = LadderKind.Cumulative });
        foreach (var level in proposal.Levels.Skip(1)) Assert.True(Assert.Single(level.Moves).By > 0);
        var spans = SpansOf(asked.Plan with { Kind = LadderKind.Cumulative });
        Assert.Equal(Math.Min(asked.Plan.LevelCount, 1 + spans.Sum(s => s.StepCount)), proposal.Levels.Count);
    });

    [Fact]
    public void Of_SemiClassicalPlan_HasEveryKeyValueWhereThereAreLevelsForThem() => Any.Sample(asked =>
    {
        var plan = asked.Plan with { Kind = LadderKind.SemiClassical };
        var proposal = LadderProposal.Of(asked.Design, plan);
        var places = proposal.Levels.Select(l => PlaceOf(asked.Design, plan.Key.FactorKey, l.Level)).ToList();
        Assert.Equal(places.Order(), places);
        Assert.Equal(Math.Min(plan.LevelCount, plan.Key.StepCount + 1), places.Distinct().Count());
    });

    [Fact]
    public void Of_TheSameTwice_GivesTheSame() => Any.Sample(asked =>
        Assert.Equivalent(LadderProposal.Of(asked.Design, asked.Plan), LadderProposal.Of(asked.Design, asked.Plan), strict: true));

    [Fact]
    public void Of_OneFootBalance_FillsTheEasyEndFirst()
    {
        // By hand: four ways to steady and three holds; six levels are two more than there are ways, so the first two ways get a longer hold.
        var proposal = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.SemiClassical, new("steadying", 0, 3), [new("holdS", 0, 2)], 6));
        Assert.Equal(
            ["toesDown 3", "toesDown 5", "armsOut 3", "armsOut 5", "handsOnHips 3", "eyesClosed 3"],
            proposal.Levels.Select(l => $"{l.Level.Settings["steadying"]} {l.Level.Dose.Amount}"));
        Assert.Equal([new("steadying", 1), new("holdS", -1)], proposal.Levels[2].Moves);
        Assert.False(proposal.IsShort);
    }

    [Fact]
    public void Of_OneFootBalanceCumulative_TakesTurns()
    {
        // By hand: key, hold, key, hold; each spread over its whole span of 3 and 2 places.
        var proposal = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Cumulative, new("steadying", 0, 3), [new("holdS", 0, 2)], 5));
        Assert.Equal(
            ["toesDown 3", "handsOnHips 3", "handsOnHips 5", "eyesClosed 5", "eyesClosed 10"],
            proposal.Levels.Select(l => $"{l.Level.Settings["steadying"]} {l.Level.Dose.Amount}"));
    }

    [Fact]
    public void Of_LevelThatTheTaskHas_KeepsIdPostureAndDemands()
    {
        var kept = OneFoot.Levels[0];
        var proposal = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("steadying", 0, 3), [], 4) { Stays = new Dictionary<string, int> { ["holdS"] = 1 } });
        Assert.True(proposal.Levels[0].IsKept);
        Assert.Equal(kept.Id, proposal.Levels[0].Level.Id);
        // Another hold of the same movement: a level of its own, shown by the same picture.
        var longer = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("holdS", 0, 2), [], 3) { Stays = new Dictionary<string, int> { ["steadying"] = 0 } }).Levels[2];
        Assert.False(longer.IsKept);
        Assert.Equal(DemandBasis.SameMovement, longer.Basis);
        Assert.Equal(kept.Posture, longer.Level.Posture);
        Assert.DoesNotContain(longer.Level.Id, OneFoot.Levels.Select(l => l.Id));
    }

    [Fact]
    public void Of_MovementThatNoLevelHas_DoesNotSayThatItAsksNothing()
    {
        var bare = OneFoot with { Levels = [] };
        var proposal = LadderProposal.Of(bare, LadderPlan.For(bare)!);
        Assert.All(proposal.Levels, l => Assert.Equal(DemandBasis.Unknown, l.Basis));
        var findings = LadderFindings.Of(bare with { Levels = [.. proposal.Levels.Select(l => l.Level)] }, null, [.. proposal.Levels.Select(l => l.Level.Id)], new SafetyPolicy(), bare.Words["en"]);
        Assert.Contains(findings, f => f is { Key: "LadderDemandsOpen", IsRefused: true });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void Of_TooFewOrTooManyLevels_Refuses(int count) =>
        Assert.Throws<ArgumentException>(() => LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("steadying", 0, 3), [], count)));

    [Fact]
    public void Of_SpanThatTheGridDoesNotHave_Refuses()
    {
        Assert.Throws<ArgumentException>(() => LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("steadying", 0, 4), [], 4)));
        Assert.Throws<ArgumentException>(() => LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("height", 0, 1), [], 4)));
        Assert.Throws<ArgumentException>(() => LadderProposal.Of(OneFoot with { Factors = [OneFoot.Factors[0]] }, new LadderPlan(LadderKind.Classical, new("steadying", 0, 3), [], 4)));
    }

    internal static TaskDesign Library(string key) => TaskLibrary.Readings.First(r => r.FileName.EndsWith($"/{key}.json", StringComparison.Ordinal)).Design!;

    private static LadderSpan Span(TaskFactor factor, int one, int other)
    {
        var (a, b) = (one % factor.Range.Count, other % factor.Range.Count);
        return new LadderSpan(factor.Key, Math.Min(a, b), Math.Max(a, b));
    }

    private static IReadOnlyList<LadderSpan> SpansOf(LadderPlan plan) => plan.Kind == LadderKind.Classical ? [plan.Key] : [plan.Key, .. plan.Supporting];

    private static int PlaceOf(TaskDesign design, string key, DesignedLevel level)
    {
        var factor = design.Factors.First(f => f.Key == key);
        return factor.Range.ToList().IndexOf(level.ValueOf(factor)!.Value);
    }
}
