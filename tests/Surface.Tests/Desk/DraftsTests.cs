using System.Text.Json;
using Slantwise.Desk.Pages.Lessons;
using Slantwise.Desk.Pages.Sheets;
using Slantwise.Desk.Pages.Tasks;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Desk;

/// <summary>What an editor gives back when nothing was typed is what it was given: opening and saving loses nothing.</summary>
public sealed class DraftsTests
{
    private static readonly Guid School = Guid.Parse("00000000-0000-7000-8000-000000000001");

    private static readonly MovementTask Balance = new()
    {
        SchoolId = School,
        Id = Number(2),
        Name = "One-foot balance",
        Purpose = "Stand still.",
        Cues = ["Eyes on one spot", "Hips level"],
        Caution = "Clear floor.",
        Levels =
        [
            Level(3, "arms out", 5m),
            Level(4, "arms crossed", 7.5m) with { Posture = "stork" },
            Level(5, "hands and head", 3m) with { Demands = [BodyDemand.Inversion, BodyDemand.HeadWeight] },
        ],
    };

    [Fact]
    public void TaskDraft_WithNothingTyped_GivesTheTaskBack() => AssertSame(Balance, TaskDraft.Of(Balance).ToTask());

    [Fact]
    public void ShownToo_OfAPicture_NamesOnlyWhatIsNotTicked()
    {
        var level = Level(6, "as shown", 3m) with { Posture = "handstand", Demands = [BodyDemand.Inversion] };
        var said = TaskWords.ShownToo(level)!;
        Assert.Contains(TaskWords.Of(BodyDemand.HandWeight), said);
        Assert.DoesNotContain(TaskWords.Of(BodyDemand.Inversion), said);
        Assert.Null(TaskWords.ShownToo(level with { Demands = [BodyDemand.Inversion, BodyDemand.HandWeight] }));
    }

    [Fact]
    public void TaskDraft_WithoutAnAmount_HasADoseOfNothing()
    {
        var draft = TaskDraft.Of(Balance);
        draft.Levels[0].Amount = null;
        Assert.Equal(0, draft.ToTask().Levels[0].Dose.Amount);
    }

    [Fact]
    public void TaskDraft_WithAnOpenCueBetween_LeavesItOut()
    {
        var draft = TaskDraft.Of(Balance);
        (draft.Cues[1], draft.Cues[3]) = (" ", "Breathe");
        Assert.Equal(["Eyes on one spot", "Breathe"], draft.ToTask().Cues);
    }

    [Fact]
    public void SheetDraft_WithNothingTyped_GivesTheSheetBack()
    {
        // Another order than the task's, and one level left out.
        var sheet = SheetOf(SheetTask.Of(Balance, [Balance.Levels[1], Balance.Levels[0]]));
        AssertSame(sheet, new SheetDraft(sheet, [Balance]).ToSheet());
    }

    [Fact]
    public void SheetDraft_OfATaskNoLongerKept_KeepsItsCopy()
    {
        var sheet = SheetOf(SheetTask.Of(Balance, Balance.Levels));
        var draft = new SheetDraft(sheet, []);
        Assert.Null(draft.Tasks[0].Task);
        AssertSame(sheet, draft.ToSheet());
    }

    [Fact]
    public void TaskPick_OfAnEditedTask_IsBehindUntilItIsTakenOver()
    {
        var copy = SheetTask.Of(Balance, [Balance.Levels[0]]);
        var edited = Balance with { Purpose = "Stand as still as a post.", Levels = [Balance.Levels[0] with { Name = "arms wide" }, .. Balance.Levels.Skip(1)] };
        var pick = TaskPick.Of(copy, edited);
        Assert.True(pick.IsBehind);
        AssertSame(copy, pick.ToSheetTask());

        pick.TakeOver();
        Assert.False(pick.IsBehind);
        AssertSame(SheetTask.Of(edited, [edited.Levels[0]]), pick.ToSheetTask());
    }

    [Fact]
    public void TaskPick_OfTheSameTask_IsNotBehind() =>
        Assert.False(TaskPick.Of(SheetTask.Of(Balance, [Balance.Levels[2], Balance.Levels[0]]), Balance).IsBehind);

    [Fact]
    public void LessonDraft_WithNothingTyped_GivesTheLessonBack() => AssertSame(PlannedLesson(), new LessonDraft(PlannedLesson()).ToLesson());

    [Fact]
    public void LessonDraft_WithAnotherSheet_ForgetsTheFrozenVersion()
    {
        var draft = new LessonDraft(PlannedLesson()) { SheetId = Number(9) };
        Assert.Null(draft.ToLesson().SheetVersion);
    }

    private static Lesson PlannedLesson() => new()
    {
        SchoolId = School,
        Id = Number(6),
        ClassId = Number(7),
        Date = new DateOnly(2026, 3, 11),
        Title = "Balances 2",
        SheetId = Number(8),
        SheetVersion = 2,
        MatCount = 12,
        Phases = [new(PhaseKind.Instruction, 8, "show the levels"), new(PhaseKind.Activity, 25, "")],
        Aims = ["Stand still", "Say why"],
        Demonstration = ["Show the wobble", "Read the cues"],
    };

    private static Sheet SheetOf(SheetTask task) => new()
    {
        SchoolId = School,
        Id = Number(8),
        Name = "Balances",
        Draft = new SheetContent { Title = "As still as a post", Tasks = [task], SetCount = 2, TrialCount = 4, Predicts = PredictionKind.HoldS },
        LatestVersion = 2,
    };

    private static Level Level(int number, string name, decimal holdS) =>
        new() { Id = Number(number), Name = name, Dose = new Dose(DoseKind.HoldS, holdS) };

    private static Guid Number(int number) => Guid.Parse($"00000000-0000-7000-8000-{number:000000000000}");

    private static void AssertSame<T>(T expected, T actual) => Assert.Equal(JsonSerializer.Serialize(expected), JsonSerializer.Serialize(actual));
}
