using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tests.Evidence;

namespace Slantwise.Records.Tests.Planning;

/// <summary>A lesson of 28 pupils on 10 mats by hand: 5 min organising, 7 of talk, 18 of practice, 5 organising; one task of 20 s, one set of five.</summary>
internal static class PlannedLesson
{
    public static readonly IReadOnlyList<LessonPhase> Phases =
        [new(PhaseKind.Management, 5, ""), new(PhaseKind.Instruction, 7, ""), new(PhaseKind.Activity, 18, ""), new(PhaseKind.Management, 5, "")];

    public static LessonRecord Of(int pupils = 28, int? mats = 10, IReadOnlyList<LessonPhase>? phases = null)
    {
        var record = new LessonBuilder().Record(withSheet: false);
        return record with
        {
            Lesson = record.Lesson with { MatCount = mats, Phases = phases ?? Phases },
            Pupils = [.. Enumerable.Range(1, pupils).Select(i => new Pupil { SchoolId = LessonBuilder.SchoolId, Id = LessonBuilder.Id(7, i), Code = $"P{i:000}", DisplayName = $"P{i}" })],
        };
    }

    public static SheetContent Sheet(int sets = 1, int trials = 5, params Dose[][] tasks) => new()
    {
        Title = "Balance", SetCount = sets, TrialCount = trials,
        Tasks = [.. (tasks.Length > 0 ? tasks : [[new Dose(DoseKind.HoldS, 20)]]).Select((doses, t) => new SheetTask
        {
            TaskId = LessonBuilder.TaskId(t + 1), Name = $"task {t + 1}",
            Levels = [.. doses.Select((dose, l) => new Level { Id = LessonBuilder.LevelId(t + 1, l + 1), Name = $"way {l + 1}", Dose = dose })],
        })],
    };
}
