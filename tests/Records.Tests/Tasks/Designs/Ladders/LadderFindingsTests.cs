using System.Globalization;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Checks;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Tasks.Files;
using static Slantwise.Records.Tests.Tasks.Designs.Ladders.LadderProposalTests;

namespace Slantwise.Records.Tests.Tasks.Designs.Ladders;

public sealed class LadderFindingsTests
{
    private static readonly TaskDesign OneFoot = Library("one-foot-balance");

    [Fact]
    public void Of_LevelThatAsksForNothing_SaysNothingAboutTheEasiest() => Assert.DoesNotContain(Keys(OneFoot), k => k.StartsWith("LadderEasiest", StringComparison.Ordinal));

    [Fact]
    public void Of_TasksOfTheLibrary_AreOneTaskEach()
    {
        foreach (var design in TaskLibrary.Designs)
        {
            var keys = Keys(design);
            Assert.DoesNotContain("LadderAlike", keys);
            Assert.DoesNotContain("LadderOffGrid", keys);
            Assert.DoesNotContain("LadderLeaps", keys);
            Assert.DoesNotContain("LadderHeadEnters", keys);
        }
    }

    [Fact]
    public void Of_HeadWeightAtLevelThree_SaysWhereItEntersAndWhatTheCapIs()
    {
        var levels = OneFoot.Levels.Select((l, i) => i < 2 ? l : l with { Demands = [BodyDemand.Inversion, BodyDemand.HeadWeight], Dose = new Dose(DoseKind.HoldS, 10) }).ToList();
        var findings = Of(OneFoot with { Levels = levels }, new SafetyPolicy { HeadWeight = PolicyChoice.Planned, HeadHoldCapS = 5 });
        Assert.Equal(3, findings.Single(f => f.Key == "LadderHeadEnters").Arguments[0]);
        Assert.Equal(3, findings.Single(f => f.Key == "LadderInversionEnters").Arguments[0]);
        Assert.Equal([3, 4, 5], findings.Where(f => f.Key == "LadderHoldCap").Select(f => (int)f.Arguments[0]));
    }

    [Fact]
    public void Of_EasiestThatThePolicyRemoves_AsksWhomTheNextOneExcludes()
    {
        var levels = OneFoot.Levels.Select((l, i) => i == 0 ? l with { Demands = [BodyDemand.Roll] } : l).ToList();
        var finding = Of(OneFoot with { Levels = levels }, new SafetyPolicy { Rolls = PolicyChoice.NotAllowed }).Single(f => f.Key == "LadderEasiestRemoved");
        Assert.Equal(2, finding.Arguments[1]);
        Assert.Contains("LadderNoneLeft", Keys(OneFoot with { Levels = [levels[0]] }, new SafetyPolicy { Rolls = PolicyChoice.NotAllowed }));
        Assert.Contains("LadderEasiestAsks", Keys(OneFoot with { Levels = levels }));
    }

    [Fact]
    public void Of_LadderThatBeginsAboveTheEasyEnd_AsksWhoNeedsIt()
    {
        var finding = Of(OneFoot with { Levels = [.. OneFoot.Levels.Skip(1)] }).Single(f => f.Key == "LadderEasiestHigh");
        Assert.Contains("toes on the floor", finding.Sentence(CultureInfo.GetCultureInfo("en")), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FactorThatWasNotChosen_IsNamed()
    {
        var finding = Assert.Single(Of(OneFoot, chosen: ["holdS"]), f => f.Key == "LadderOtherFactor" && (int)f.Arguments[0] == 1);
        Assert.Equal("What steadies", finding.Arguments[2]);
        Assert.DoesNotContain("LadderOtherFactor", Of(OneFoot, chosen: ["holdS", "steadying"]).Select(f => f.Key));
    }

    [Fact]
    public void Of_OneThingHarderAndAnotherEasier_CallsTheOrderAHypothesis()
    {
        // By hand, from the file: level 4 holds 10 s with hands on hips, level 5 holds 5 s with eyes closed.
        var finding = Assert.Single(Of(OneFoot), f => f.Key == "LadderBothWays");
        Assert.Equal([4, 5], finding.Arguments.Take(2));
    }

    [Fact]
    public void Of_PicturesThatRestOnOtherParts_AskWhetherItIsOneTask()
    {
        var levels = OneFoot.Levels.Select((l, i) => i == 1 ? l with { Posture = "shoulder-stand" } : l).ToList();
        Assert.Contains(Of(OneFoot with { Levels = levels }), f => f.Key == "LadderSupports" && (int)f.Arguments[0] == 1);
        Assert.DoesNotContain("LadderSupports", Keys(OneFoot));
    }

    [Fact]
    public void Of_TwoAtTheSamePlace_Refuses()
    {
        var levels = OneFoot.Levels.ToList();
        levels[2] = levels[1] with { Id = levels[2].Id };
        Assert.Contains(Of(OneFoot with { Levels = levels }), f => f is { Key: "LadderAlike", IsRefused: true });
    }

    [Fact]
    public void Of_LevelAddedByHandInAnotherMeasure_IsOffTheGridAndAsksWhetherItIsOneTask()
    {
        var byHand = new DesignedLevel { Id = Guid.CreateVersion7(), Dose = new Dose(DoseKind.RepetitionsCount, 3) };
        var keys = Keys(OneFoot with { Levels = [.. OneFoot.Levels, byHand] });
        Assert.Contains("LadderOffGrid", keys);
        Assert.Contains("LadderDoseKinds", keys);
    }

    [Theory]
    [InlineData("one-foot-balance", LadderKind.SemiClassical)]
    // Height and way of landing in turn, neither ever easing.
    [InlineData("jump-down", LadderKind.Cumulative)]
    public void KindOf_TaskOfTheLibrary_IsAsByHand(string key, LadderKind expected) => Assert.Equal(expected, LadderOrder.KindOf(Library(key)));

    [Fact]
    public void KindOf_ProposalOfAKind_IsNoWeakerThanIt()
    {
        var classical = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("steadying", 0, 3), [], 4));
        Assert.Equal(LadderKind.Classical, LadderOrder.KindOf(OneFoot with { Levels = [.. classical.Levels.Select(l => l.Level)] }));
        var cumulative = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Cumulative, new("steadying", 0, 3), [new("holdS", 0, 2)], 5));
        Assert.Equal(LadderKind.Cumulative, LadderOrder.KindOf(OneFoot with { Levels = [.. cumulative.Levels.Select(l => l.Level)] }));
    }

    [Fact]
    public void Names_OfNewLevels_SayWhereTheyStandInEachLanguage()
    {
        var bare = OneFoot with { Levels = [], Words = OneFoot.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [] }) };
        var level = LadderProposal.Of(bare, new LadderPlan(LadderKind.Classical, new("steadying", 1, 3), [], 3)).Levels[0].Level;
        Assert.Equal("Foot lifted, arms wide", LadderNames.Of(bare, level, bare.Words["en"]));
        Assert.NotEqual(LadderNames.Of(bare, level, bare.Words["en"]), LadderNames.Of(bare, level, bare.Words["es"]));
        // The task has a level that is done so: its name was chosen by a person.
        Assert.Equal("Free foot lifted, arms out wide", LadderNames.Of(OneFoot, level with { Dose = new Dose(DoseKind.HoldS, 3) }, OneFoot.Words["en"]));
    }

    [Fact]
    public void OfReach_PupilsWithoutALevel_AreCountedAndNotNamed()
    {
        var reach = Reach(trialCount: 40, (3, .9, 2.0), (3, .2, -3.0), (0, 0, 0), (3, .8, 1.0));
        var findings = LadderFindings.Of(reach, ReachBand.Usual, "7B");
        Assert.Equal(["LadderReachNone", "LadderReachLeft"], findings.Select(f => f.Key));
        Assert.Equal("In 7B, 1 of 4 pupils have no level that policy and restrictions allow. What way in is there?", findings[0].Sentence(CultureInfo.GetCultureInfo("en")));
        Assert.Equal(["7B", 4, 1, 3, 1], findings[1].Arguments);
        Assert.DoesNotContain(findings, f => f.Sentence(CultureInfo.GetCultureInfo("en")).Contains("P1", StringComparison.Ordinal));
    }

    [Fact]
    public void OfReach_BeforeAnyTry_SaysOnlyWhatIsNotAllowed()
    {
        Assert.Equal("LadderReachNone", Assert.Single(LadderFindings.Of(Reach(0, (3, .2, -3.0), (0, 0, 0)), ReachBand.Usual, "7B")).Key);
        Assert.Empty(LadderFindings.Of(Reach(40, (3, .9, 2.0)), ReachBand.Usual, "7B"));
    }

    [Fact]
    public void OfProposal_FewerThanAskedFor_SaysHowMany()
    {
        var proposal = LadderProposal.Of(OneFoot, new LadderPlan(LadderKind.Classical, new("steadying", 0, 2), [], 5));
        Assert.Equal([3, 5], Assert.Single(LadderFindings.Of(proposal)).Arguments);
        Assert.Empty(LadderFindings.Of(LadderProposal.Of(OneFoot, proposal.Plan with { LevelCount = 3 })));
    }

    // Pupils by what is believed of them: levels allowed, chance to be included, mean at every level.
    private static TaskReach Reach(int trialCount, params (int AllowedCount, double IncludedFraction, double MeanLogits)[] pupils) => new(
        OneFoot.Id,
        [.. pupils.Select((p, i) => new ReachedPupil(
            new Guid(i + 1, 0, 0, new byte[8]), $"P{i}", new PupilReach(p.AllowedCount, p.IncludedFraction, 1),
            [.. Enumerable.Repeat(p.AllowedCount == 0 ? (LevelOutlook?)null : new LevelOutlook(p.MeanLogits, 1), 3)], 10, false))],
        [], new SheetReach([], [], 2, 1, 3), null, trialCount);

    private static IReadOnlyList<Finding> Of(TaskDesign design, SafetyPolicy? policy = null, IReadOnlyCollection<string>? chosen = null) =>
        LadderFindings.Of(design, chosen, [], policy ?? new SafetyPolicy(), design.Words["en"]);

    private static IReadOnlyList<string> Keys(TaskDesign design, SafetyPolicy? policy = null) => [.. Of(design, policy).Select(f => f.Key)];
}
