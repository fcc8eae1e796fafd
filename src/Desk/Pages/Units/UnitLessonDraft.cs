using Slantwise.Desk.Pages.Lessons;
using Slantwise.Records.Units;

namespace Slantwise.Desk.Pages.Units;

/// <summary>A lesson of a unit while it is being planned.</summary>
public sealed class UnitLessonDraft
{
    /// <summary>What it is called.</summary>
    public string Title { get; set; } = "";

    /// <summary>The lesson in the calendar; none until there is one.</summary>
    public Guid? LessonId { get; set; }

    /// <summary>Its aims, one a line.</summary>
    public string Aims { get; set; } = "";

    /// <summary>Its tasks in order.</summary>
    public List<UnitTaskDraft> Tasks { get; init; } = [];

    /// <summary>The day a lesson would be made for; none while nothing is typed.</summary>
    public DateOnly? Day { get; set; }

    /// <summary>A lesson to go on with.</summary>
    /// <param name="lesson">The lesson as it is kept.</param>
    public static UnitLessonDraft Of(PlannedUnitLesson lesson) => new()
    {
        Title = lesson.Title,
        LessonId = lesson.LessonId,
        Aims = string.Join('\n', lesson.Aims),
        Tasks = [.. lesson.Tasks.Select(t => new UnitTaskDraft(t.TaskId) { OutcomeIds = [.. t.OutcomeIds] })],
    };

    /// <summary>The lesson as typed.</summary>
    /// <param name="outcomeIds">The outcomes of the unit, in order: others are no longer there.</param>
    public PlannedUnitLesson ToLesson(IReadOnlyList<Guid> outcomeIds) => new(
        Title.Trim(), LessonId, [.. Tasks.Select(t => new UnitTask(t.TaskId, [.. outcomeIds.Where(t.OutcomeIds.Contains)]))], LessonDraft.LinesOf(Aims));
}
