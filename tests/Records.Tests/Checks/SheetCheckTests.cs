using Slantwise.Records.Checks;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Checks;

public sealed class SheetCheckTests
{
    private static readonly SafetyPolicy Cautious = new();

    public static TheoryData<string, string> Broken => new()
    {
        { "no task", "SheetHasNoTask" },
        { "four tasks", "SheetHasTooManyTasks" },
        { "one task twice", "SheetTaskTwice" },
        { "no level", "SheetTaskHasNoLevel" },
        { "seven levels", "SheetTaskHasTooManyLevels" },
        { "two levels alike", "LevelsAlike" },
        { "one level twice", "LevelTwice" },
        { "one level in two tasks", "LevelInTwoTasks" },
        { "no set", "SheetSetCount" },
        { "five sets", "SheetSetCount" },
        { "no trial", "SheetTrialCount" },
        { "eleven trials", "SheetTrialCount" },
        { "six cues", "TaskHasTooManyCues" },
        { "an empty cue", "CueEmpty" },
        { "no title", "SheetTitleEmpty" },
        { "a long title", "SheetTitleTooLong" },
        { "a bell in the title", "TextHasControl" },
        { "a nameless level", "LevelNameEmpty" },
        { "head weight", "LevelHeadWeightNotAllowed" },
        { "spotting", "LevelSpottingNotAllowed" },
        { "an unknown prediction", "SheetPredictsUnknown" },
    };

    [Fact]
    public void Of_GoodSheet_SaysNothing() => Assert.Empty(SheetCheck.Of(Towers, Cautious));

    [Theory]
    [MemberData(nameof(Broken))]
    public void Of_BrokenSheet_IsRefusedInWords(string how, string key)
    {
        var refused = SheetCheck.Of(Broke(how), Cautious).Where(f => f.IsRefused).ToList();
        Assert.Equal([key], refused.Select(f => f.Key).Distinct());
        Sentences.AreWhole(refused);
    }

    [Theory]
    [InlineData(DoseKind.HoldS, 0, "DoseHoldS")]
    [InlineData(DoseKind.HoldS, 600, null)]
    [InlineData(DoseKind.HoldS, 600.5, "DoseHoldS")]
    [InlineData(DoseKind.RepetitionsCount, -1, "DoseRepetitionsCount")]
    [InlineData(DoseKind.RepetitionsCount, 2.5, "DoseRepetitionsNotWhole")]
    [InlineData(DoseKind.DistanceM, 101, "DoseDistanceM")]
    [InlineData(DoseKind.HeightM, 6, "DoseHeightM")]
    [InlineData(DoseKind.TargetSizeM, 11, "DoseTargetSizeM")]
    [InlineData((DoseKind)77, 1, "DoseKindUnknown")]
    public void Of_DoseAtItsEnds_IsHeldToItsLimits(DoseKind kind, double amount, string? key)
    {
        var level = BalanceLevels[0] with { Dose = new Dose(kind, (decimal)amount) };
        var findings = SheetCheck.Of(WithTask(Towers.Tasks[0] with { Levels = [level] }), Cautious);
        Assert.Equal(key is null ? [] : [key], findings.Select(f => f.Key));
        Sentences.AreWhole(findings);
    }

    [Fact]
    public void Of_HeadWeightOncePolicyAllowsIt_SaysNothing() =>
        Assert.Empty(SheetCheck.Of(Broke("head weight"), Cautious with { HeadWeight = PolicyChoice.Planned }));

    [Fact]
    public void Of_HeadWeightHeldTooLong_NamesTheCap()
    {
        var planned = Cautious with { HeadWeight = PolicyChoice.Planned, HeadHoldCapS = 1 };
        var finding = Assert.Single(SheetCheck.Of(Broke("head weight"), planned));
        Assert.Equal((FindingSeverity.Refused, "LevelHeadHoldTooLong"), (finding.Severity, finding.Key));
        Assert.Contains("longer than the 1 s", finding.Sentence(System.Globalization.CultureInfo.GetCultureInfo("en-GB")), StringComparison.Ordinal);
        Sentences.AreWhole([finding]);
    }

    [Fact]
    public void Of_NoCues_IsFlaggedAndTaken()
    {
        var finding = Assert.Single(SheetCheck.Of(WithTask(Towers.Tasks[0] with { Cues = [] }), Cautious));
        Assert.Equal((FindingSeverity.Flagged, "TaskHasNoCue"), (finding.Severity, finding.Key));
    }

    [Fact]
    public void Of_LevelsAlikeButForOneDemand_AreTwoLevels()
    {
        var twin = BalanceLevels[0] with { Id = Id(70), Demands = [BodyDemand.HandWeight] };
        Assert.Empty(SheetCheck.Of(WithTask(Towers.Tasks[0] with { Levels = [BalanceLevels[0], twin] }), Cautious));
    }

    [Fact]
    public void Of_TaskOfItself_FlagsWhatIsStillMissing()
    {
        var task = new MovementTask { SchoolId = SchoolId, Id = BalanceId, Name = "V-sit" };
        var findings = TaskCheck.Of(task);
        Assert.Equal(["TaskHasNoCue", "TaskHasNoLevelYet"], findings.Select(f => f.Key));
        Assert.DoesNotContain(findings, f => f.IsRefused);
        Assert.Contains(TaskCheck.Of(task with { Name = " " }), f => f is { IsRefused: true, Key: "TaskNameEmpty" });
        Assert.Contains(TaskCheck.Of(task with { Levels = [BalanceLevels[0], BalanceLevels[0] with { Id = Id(71), Name = " ARMS  out" }] }), f => f is { IsRefused: true, Key: "LevelsAlike" });
    }

    private static SheetContent WithTask(SheetTask task) => Towers with { Tasks = [task] };

    private static SheetContent Broke(string how)
    {
        var task = Towers.Tasks[0];
        return how switch
        {
            "no task" => Towers with { Tasks = [] },
            "four tasks" => Towers with { Tasks = [.. Towers.Tasks, task with { TaskId = Id(60), Levels = [Fresh(61)] }, task with { TaskId = Id(62), Levels = [Fresh(63)] }] },
            "one task twice" => Towers with { Tasks = [task, task] },
            "no level" => WithTask(task with { Levels = [] }),
            "seven levels" => WithTask(task with { Levels = Enumerable.Range(80, 7).Select(Fresh).ToList() }),
            "two levels alike" => WithTask(task with { Levels = [BalanceLevels[0], BalanceLevels[0] with { Id = Id(64), Name = "  Arms OUT " }] }),
            "one level twice" => WithTask(task with { Levels = [BalanceLevels[0], BalanceLevels[0]] }),
            "one level in two tasks" => Towers with { Tasks = [task, Towers.Tasks[1] with { Levels = [BalanceLevels[0]] }] },
            "no set" => Towers with { SetCount = 0 },
            "five sets" => Towers with { SetCount = 5 },
            "no trial" => Towers with { TrialCount = 0 },
            "eleven trials" => Towers with { TrialCount = 11 },
            "six cues" => WithTask(task with { Cues = ["a", "b", "c", "d", "e", "f"] }),
            "an empty cue" => WithTask(task with { Cues = ["a", " "] }),
            "no title" => Towers with { Title = " " },
            "a long title" => Towers with { Title = new string('x', 81) },
            "a bell in the title" => Towers with { Title = "Ring\a" },
            "a nameless level" => WithTask(task with { Levels = [BalanceLevels[0] with { Name = "" }] }),
            "head weight" => WithTask(task with { Levels = [BalanceLevels[0] with { Demands = [BodyDemand.HeadWeight] }] }),
            "spotting" => WithTask(task with { Levels = [BalanceLevels[0] with { Demands = [BodyDemand.Spotting] }] }),
            "an unknown prediction" => Towers with { Predicts = (PredictionKind)9 },
            _ => throw new ArgumentOutOfRangeException(nameof(how), how, "No such sheet."),
        };
    }

    private static Level Fresh(int id) => new() { Id = Id(id), Name = "way " + id, Dose = new(DoseKind.HoldS, 3m) };
}
