using System.Globalization;
using Slantwise.Records.Evidence.Tables;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Safety;

/// <summary>The log of incidents and near misses as a table to take away.</summary>
public static class IncidentTable
{
    /// <summary>Its name in an address and a file.</summary>
    public const string Key = "incidents";

    /// <summary>The table, a row each.</summary>
    /// <param name="incidents">In the order to write them.</param>
    /// <param name="lessons">The school's lessons.</param>
    /// <param name="classes">The school's classes.</param>
    /// <param name="tasks">The school's tasks.</param>
    /// <param name="pupils">The school's pupils.</param>
    public static EvidenceTable Of(
        IEnumerable<Incident> incidents, IReadOnlyList<Lesson> lessons, IReadOnlyList<SchoolClass> classes, IReadOnlyList<MovementTask> tasks, IReadOnlyList<Pupil> pupils) => new(
        Key,
        ["day", "time", "kind", "class", "lesson", "task", "place", "happened", "done", "changed", "pupils"],
        [.. from incident in incidents
            let lesson = lessons.FirstOrDefault(l => l.Id == incident.LessonId)
            select (IReadOnlyList<object?>)[
                incident.Day,
                incident.MinuteOfDay is { } minute ? TimeOnly.MinValue.AddMinutes(minute).ToString("HH:mm", CultureInfo.InvariantCulture) : null,
                incident.Kind.ToString(),
                classes.FirstOrDefault(c => c.Id == lesson?.ClassId)?.Name,
                lesson?.Title,
                tasks.FirstOrDefault(t => t.Id == incident.TaskId)?.Name,
                incident.Place, incident.Happened, incident.Done, incident.Changed,
                string.Join("; ", pupils.Where(p => incident.PupilIds.Contains(p.Id)).Select(p => p.Label))]]);
}
