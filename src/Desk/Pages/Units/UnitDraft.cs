using Slantwise.Records.Units;

namespace Slantwise.Desk.Pages.Units;

/// <summary>A unit while it is being planned.</summary>
/// <param name="unit">The unit as it is kept.</param>
public sealed class UnitDraft(TeachingUnit unit)
{
    /// <summary>What it is called.</summary>
    public string Name { get; set; } = unit.Name;

    /// <summary>The first day it is planned for.</summary>
    public DateOnly? FirstDay { get; set; } = unit.FirstDay;

    /// <summary>The teacher's notes.</summary>
    public string Notes { get; set; } = unit.Content.Notes;

    /// <summary>The outcomes in order.</summary>
    public List<OutcomeDraft> Outcomes { get; } = [.. unit.Content.Outcomes.Select(OutcomeDraft.Of)];

    /// <summary>The lessons in order.</summary>
    public List<UnitLessonDraft> Lessons { get; } = [.. unit.Content.Lessons.Select(UnitLessonDraft.Of)];

    /// <summary>Every task of every lesson, with the lesson's number from 1.</summary>
    public IReadOnlyList<(int LessonNumber, UnitLessonDraft Lesson, UnitTaskDraft Task)> AllTasks =>
        [.. Lessons.SelectMany((lesson, i) => lesson.Tasks.Select(task => (i + 1, lesson, task)))];

    /// <summary>The unit as typed.</summary>
    public TeachingUnit ToUnit() => unit with
    {
        Name = Name.Trim(),
        FirstDay = FirstDay,
        Content = new UnitContent
        {
            Outcomes = [.. Outcomes.Select(o => o.ToOutcome())],
            Lessons = [.. Lessons.Select(l => l.ToLesson([.. Outcomes.Select(o => o.Id)]))],
            Notes = Notes.Trim(),
        },
    };

    /// <summary>The day a lesson would be made for, where it has none: a week after the one before.</summary>
    /// <param name="index">The lesson's place, from 0.</param>
    /// <param name="today">The day the unit would begin if no first day is set.</param>
    public DateOnly DayOf(int index, DateOnly today) => Lessons[index].Day ?? UnitCalendar.Days(FirstDay ?? today, null, index + 1)[index];
}
