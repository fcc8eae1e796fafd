using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>The log of the invented school.</summary>
public sealed partial record DemoSchool
{
    private const string ThrowingTask = "Target throw";
    private static readonly TimeOnly Written = new(12, 5);

    // In the lesson before the last: its task comes again, and with it what was noted. Nobody was hurt, and nobody is named.
    private static IReadOnlyList<Incident> IncidentsOf(IReadOnlyList<Lesson> lessons, IReadOnlyList<MovementTask> tasks, Guid id) => [new Incident
    {
        SchoolId = lessons[^2].SchoolId,
        Id = id,
        Kind = IncidentKind.NearMiss,
        Day = lessons[^2].Date,
        MinuteOfDay = 9 * 60 + 40,
        LessonId = lessons[^2].Id,
        TaskId = tasks.FirstOrDefault(t => t.Name == ThrowingTask)?.Id,
        Place = "far wall",
        Happened = "Somebody ran in to collect while the next bean bag was in the air.",
        Done = "Stopped everybody and showed the signal again.",
        Changed = "All throw, then all collect, at one signal.",
        WrittenAt = new DateTimeOffset(lessons[^2].Date.ToDateTime(Written), TimeSpan.Zero),
    }];
}
