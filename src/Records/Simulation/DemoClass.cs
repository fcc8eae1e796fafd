using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Simulation;

/// <summary>One invented class with its lessons; the school puts two together.</summary>
internal sealed record DemoClass
{
    private const int WeekDays = 7;

    private static readonly LessonPhase[] Phases =
    [
        new(PhaseKind.Management, 3, "Register, mats and ropes out"),
        new(PhaseKind.Instruction, 5, "Every level shown once; cues read aloud"),
        new(PhaseKind.Activity, 40, "Choose, predict, try, tick, decide"),
        new(PhaseKind.Instruction, 5, "What did you look at to decide?"),
        new(PhaseKind.Management, 3, "Sheets in, mats away"),
    ];

    /// <summary>The group.</summary>
    public required SchoolClass Group { get; init; }

    /// <summary>Its pupils, by label.</summary>
    public required IReadOnlyList<Pupil> Pupils { get; init; }

    /// <summary>Their restrictions.</summary>
    public required IReadOnlyList<Restriction> Restrictions { get; init; }

    /// <summary>Its lessons, earliest first; the last one is still to come.</summary>
    public required IReadOnlyList<Lesson> Lessons { get; init; }

    /// <summary>Pupils with codes and names.</summary>
    public static IReadOnlyList<Pupil> MakePupils(Guid schoolId, string codeLetter, int count, Draws draws, Func<Guid> newId) =>
        DemoNames.For(count, draws)
            .Select((name, i) => new Pupil { SchoolId = schoolId, Id = newId(), Code = $"{codeLetter}{i + 1:00}", DisplayName = name })
            .ToList();

    /// <summary>A lesson a week, the last one on the given day.</summary>
    /// <param name="group">The class taught.</param>
    /// <param name="lastDay">The day of the last lesson.</param>
    /// <param name="sheets">The sheet of each lesson in order, with the version in use; none for one that is not frozen yet.</param>
    /// <param name="newId">Makes an id.</param>
    public static IReadOnlyList<Lesson> MakeLessons(
        SchoolClass group, DateOnly lastDay, IReadOnlyList<(Sheet Sheet, int? Version)> sheets, Func<Guid> newId) =>
        sheets.Select((use, i) => new Lesson
        {
            SchoolId = group.SchoolId,
            Id = newId(),
            ClassId = group.Id,
            Date = lastDay.AddDays(-WeekDays * (sheets.Count - 1 - i)),
            Title = use.Sheet.Name,
            SheetId = use.Sheet.Id,
            SheetVersion = use.Version,
            MatCount = 14,
            Phases = Phases,
        }).ToList();

    /// <summary>The plan of the lessons that are over.</summary>
    /// <param name="plan">What all classes of the school share.</param>
    /// <param name="startsAt">When lessons begin, UTC.</param>
    /// <param name="contentOf">What was on a lesson's sheet.</param>
    /// <param name="lastTypedFraction">How much of the latest lesson is typed in.</param>
    public SimulationPlan PlanOf(
        SimulationPlan plan, TimeOnly startsAt, Func<Lesson, SheetContent> contentOf, double lastTypedFraction)
    {
        var past = Lessons.Where(lesson => lesson.SheetVersion is not null).ToList();
        return plan with
        {
            Pupils = Pupils,
            Restrictions = Restrictions,
            Lessons = past.Select(lesson => new SimulatedLesson
            {
                Lesson = lesson,
                Content = contentOf(lesson),
                StartsAt = new DateTimeOffset(lesson.Date, startsAt, TimeSpan.Zero),
                TypedFraction = lesson == past[^1] ? lastTypedFraction : 1,
            }).ToList(),
        };
    }
}
