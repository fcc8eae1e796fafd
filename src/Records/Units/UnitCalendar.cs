using Slantwise.Records.Lessons;

namespace Slantwise.Records.Units;

/// <summary>Puts the lessons of a unit into the calendar.</summary>
public static class UnitCalendar
{
    private const int WeekDays = 7;

    /// <summary>The day of each lesson of a unit: one a week.</summary>
    /// <param name="firstDay">The first day it may begin.</param>
    /// <param name="weekday">The day of the week; none for that of <paramref name="firstDay"/>.</param>
    /// <param name="count">How many, 0 or more.</param>
    /// <returns>Rising by a week each; the first is <paramref name="firstDay"/> or the next such day after it. Holidays are not known.</returns>
    public static IReadOnlyList<DateOnly> Days(DateOnly firstDay, DayOfWeek? weekday, int count)
    {
        var ahead = weekday is { } day ? ((int)day - (int)firstDay.DayOfWeek + WeekDays) % WeekDays : 0;
        return [.. Enumerable.Range(0, count).Select(i => firstDay.AddDays(ahead + i * WeekDays))];
    }

    /// <summary>The lessons to add to the calendar for those of a unit that have none, in one step.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="firstDay">The first day it may begin.</param>
    /// <param name="weekday">The day of the week; none for that of <paramref name="firstDay"/>.</param>
    /// <param name="newId">Makes an id.</param>
    /// <returns>The unit with its lessons tied to the calendar, and the lessons to save before it: title and aims of the unit's, no sheet yet. A lesson that was tied already keeps its tie and its week.</returns>
    public static (TeachingUnit Unit, IReadOnlyList<Lesson> Lessons) Fill(TeachingUnit unit, DateOnly firstDay, DayOfWeek? weekday, Func<Guid> newId)
    {
        var days = Days(firstDay, weekday, unit.Content.Lessons.Count);
        var made = new List<Lesson>();
        var tied = unit.Content.Lessons.Select((lesson, i) =>
        {
            if (lesson.LessonId is not null) return lesson;
            made.Add(LessonOf(unit, lesson, days[i], newId()));
            return lesson with { LessonId = made[^1].Id };
        }).ToList();
        return (unit with { FirstDay = unit.FirstDay ?? firstDay, Content = unit.Content with { Lessons = tied } }, made);
    }

    /// <summary>A lesson in the calendar for one of a unit: its title and aims, no sheet yet.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="lesson">One of its lessons.</param>
    /// <param name="day">The day.</param>
    /// <param name="id">The new lesson's id.</param>
    public static Lesson LessonOf(TeachingUnit unit, PlannedUnitLesson lesson, DateOnly day, Guid id) => new()
    {
        SchoolId = unit.SchoolId,
        Id = id,
        ClassId = unit.ClassId,
        Date = day,
        Title = lesson.Title,
        Aims = [.. lesson.Aims],
        Phases = [new(PhaseKind.Management, 5, ""), new(PhaseKind.Instruction, 8, ""), new(PhaseKind.Activity, 25, ""), new(PhaseKind.Management, 7, "")],
    };
}
