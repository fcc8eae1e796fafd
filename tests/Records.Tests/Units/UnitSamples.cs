using Slantwise.Records.Lessons;
using Slantwise.Records.Tests.Evidence;
using Slantwise.Records.Units;

namespace Slantwise.Records.Tests.Units;

/// <summary>Units over the small lessons of <see cref="LessonBuilder"/>.</summary>
internal static class UnitSamples
{
    public static readonly Outcome Still = new(LessonBuilder.Id(20, 1), "S", "Holds still", "Own");
    public static readonly Outcome Soft = new(LessonBuilder.Id(20, 2), "", "Lands softly", "");
    public static readonly Outcome Talk = new(LessonBuilder.Id(20, 3), "T", "Says why", "");

    public static readonly string[] Names = ["Ana", "Ben", "Chi", "Dev", "Eli", "Fay", "Gus", "Hal"];

    public static LessonBuilder Lesson(int number) => new LessonBuilder(number).Pupils(Names)
        .Task(1, "Stork", ["Eyes on one spot.", "Hips level."], (1, 3, null), (2, 5, null), (3, 8, null))
        .Task(2, "Frog", ["Lean slowly."], (4, 2, null));

    public static UnitTask Task(int task, params Outcome[] outcomes) => new(LessonBuilder.TaskId(task), [.. outcomes.Select(o => o.Id)]);

    public static PlannedUnitLesson Of(LessonRecord? record, params UnitTask[] tasks) => new(record?.Lesson.Title ?? "Later", record?.Lesson.Id, tasks, ["Aim one"]);

    public static TeachingUnit Unit(UnitContent content) => new()
    {
        SchoolId = LessonBuilder.SchoolId, Id = LessonBuilder.Id(21, 1), ClassId = LessonBuilder.ClassId, Name = "Still and soft", FirstDay = new DateOnly(2027, 3, 8), Content = content,
    };
}
