using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Desk.Results;

/// <summary>A lesson with two pupils: a hold at four levels with three cues, then a rope task at two levels with no cue.</summary>
internal static class SampleLesson
{
    public static readonly School School = new() { Id = new Guid("10000000-0000-0000-0000-000000000001"), Name = "Brook School" };

    public static readonly Pupil Ada = new() { SchoolId = School.Id, Id = new Guid("20000000-0000-0000-0000-000000000001"), Code = "7B-01", DisplayName = "Ada" };

    public static readonly Pupil Ben = new() { SchoolId = School.Id, Id = new Guid("20000000-0000-0000-0000-000000000002"), Code = "7B-02" };

    /// <summary>Holds of 3, 5, 8 and 10 seconds.</summary>
    public static readonly SheetTask Balance = new()
    {
        TaskId = new Guid("30000000-0000-0000-0000-000000000001"),
        Name = "One-foot balance",
        Cues = ["Look at one spot", "Standing knee soft", "Hips level"],
        Levels = [Level(1, DoseKind.HoldS, 3), Level(2, DoseKind.HoldS, 5), Level(3, DoseKind.HoldS, 8), Level(4, DoseKind.HoldS, 10)],
    };

    public static readonly SheetTask Rope = new()
    {
        TaskId = new Guid("30000000-0000-0000-0000-000000000002"),
        Name = "Rope jump",
        Levels = [Level(5, DoseKind.RepetitionsCount, 5), Level(6, DoseKind.RepetitionsCount, 10)],
    };

    public static SheetContent Sheet(PredictionKind predicts = PredictionKind.SuccessCount, int trialCount = 5, int setCount = 3, params SheetTask[] tasks) =>
        new() { Title = "Balance", Tasks = tasks.Length > 0 ? tasks : [Balance], SetCount = setCount, TrialCount = trialCount, Predicts = predicts };

    public static LessonRecord Record(SheetContent sheet) => new()
    {
        School = School,
        Class = new() { SchoolId = School.Id, Id = ClassId, Name = "7B" },
        Lesson = new() { SchoolId = School.Id, Id = LessonId, ClassId = ClassId, Date = new(2026, 3, 2) },
        Sheet = new() { SchoolId = School.Id, SheetId = Guid.Empty, Version = 1, Content = sheet, FrozenAt = TickingClock.Start },
        Pupils = [Ada, Ben],
    };

    public static readonly Guid LessonId = new("40000000-0000-0000-0000-000000000001");

    private static readonly Guid ClassId = new("50000000-0000-0000-0000-000000000001");

    private static Level Level(int number, DoseKind kind, decimal amount) =>
        new() { Id = new Guid(number, 0, 6, new byte[8]), Name = $"way {number}", Dose = new(kind, amount) };
}
