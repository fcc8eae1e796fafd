namespace Slantwise.Records.Units;

/// <summary>A unit taught once, for another class or another year.</summary>
public static class UnitCopy
{
    /// <summary>Copies what was planned: outcomes, lessons with titles, aims and tasks, and the notes.</summary>
    /// <param name="unit">The unit as it was taught.</param>
    /// <param name="id">The copy's id.</param>
    /// <param name="classId">The class it is for.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="firstDay">The first day; none where it is not yet known.</param>
    /// <returns>A unit of its own without lessons in the calendar, and so without evidence: what another class did stays with that class.</returns>
    public static TeachingUnit Of(TeachingUnit unit, Guid id, Guid classId, string name, DateOnly? firstDay) => new()
    {
        SchoolId = unit.SchoolId,
        Id = id,
        ClassId = classId,
        Name = name,
        FirstDay = firstDay,
        Content = new UnitContent
        {
            Outcomes = [.. unit.Content.Outcomes],
            Lessons = [.. unit.Content.Lessons.Select(l => new PlannedUnitLesson(l.Title, null, [.. l.Tasks.Select(t => new UnitTask(t.TaskId, [.. t.OutcomeIds]))], [.. l.Aims]))],
            Notes = unit.Content.Notes,
        },
    };
}
