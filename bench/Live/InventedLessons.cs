using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;

namespace Slantwise.Bench.Live;

/// <summary>Lessons of an invented class, the last one still empty.</summary>
internal static class InventedLessons
{
    public static (LessonRecord Lesson, IReadOnlyList<LessonRecord> Before, IReadOnlyList<Entry> Entries) Of(int pupils, int lessons)
    {
        var unit = InventedUnit.PlanFor(11, pupils, lessons, new DateOnly(2026, 9, 7));
        // One task, three sets of five: 15 tries a pupil and lesson.
        SheetContent Short(SheetContent content) => content with { Tasks = [content.Tasks[0]], SetCount = 3, TrialCount = 5 };
        var plan = unit with { Lessons = [.. unit.Lessons.Select(l => l with { Content = Short(l.Content) })] };
        var simulated = ClassSimulator.Run(plan);
        var records = plan.Lessons.Select(taught => new LessonRecord
        {
            School = plan.School,
            Class = new() { SchoolId = plan.School.Id, Id = taught.Lesson.ClassId, Name = "7A" },
            Lesson = taught.Lesson,
            Sheet = new() { SchoolId = plan.School.Id, SheetId = taught.Lesson.SheetId!.Value, Version = 1, FrozenAt = default, Content = taught.Content },
            Pupils = plan.Pupils,
            Entries = [.. simulated.Entries.Where(e => e.LessonId == taught.Lesson.Id)],
        }).ToList();
        return (records[^1] with { Entries = [] }, records[..^1], records[^1].Entries);
    }
}
