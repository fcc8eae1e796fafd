using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>An incident or near miss while it is being typed.</summary>
public sealed class IncidentDraft
{
    private const int HourMin = 60;

    /// <summary>Which it is; none while none is picked.</summary>
    public IncidentKind? Kind { get; set; }

    /// <summary>The day.</summary>
    public DateOnly? Day { get; set; }

    /// <summary>The time; none where nobody noted it.</summary>
    public TimeOnly? Time { get; set; }

    /// <summary>The lesson; none where it was outside of one.</summary>
    public Guid? LessonId { get; set; }

    /// <summary>The task; none where it was none.</summary>
    public Guid? TaskId { get; set; }

    /// <summary>Where.</summary>
    public string Place { get; set; } = "";

    /// <summary>What happened.</summary>
    public string Happened { get; set; } = "";

    /// <summary>What was done at once.</summary>
    public string Done { get; set; } = "";

    /// <summary>What will be different.</summary>
    public string Changed { get; set; } = "";

    /// <summary>The class whose pupils can be picked; the lesson's, where there is one.</summary>
    public Guid? ClassId { get; set; }

    /// <summary>Pupils concerned.</summary>
    public HashSet<Guid> PupilIds { get; } = [];

    /// <summary>A new one, in a lesson if one is given.</summary>
    /// <param name="lesson">The lesson it is logged from.</param>
    /// <param name="today">Today.</param>
    public static IncidentDraft New(Lesson? lesson, DateOnly today)
    {
        var draft = new IncidentDraft { Day = today };
        draft.Take(lesson, today);
        return draft;
    }

    /// <summary>One as it is kept.</summary>
    /// <param name="incident">The incident.</param>
    /// <param name="lesson">Its lesson.</param>
    public static IncidentDraft Of(Incident incident, Lesson? lesson)
    {
        var draft = new IncidentDraft
        {
            Kind = incident.Kind, Day = incident.Day, LessonId = incident.LessonId, TaskId = incident.TaskId, ClassId = lesson?.ClassId,
            Time = incident.MinuteOfDay is { } minute ? TimeOnly.MinValue.AddMinutes(minute) : null,
            Place = incident.Place, Happened = incident.Happened, Done = incident.Done, Changed = incident.Changed,
        };
        draft.PupilIds.UnionWith(incident.PupilIds);
        return draft;
    }

    /// <summary>Puts it into a lesson, on the lesson's day unless that is still to come.</summary>
    /// <param name="lesson">The lesson; none for outside of one.</param>
    /// <param name="today">Today.</param>
    public void Take(Lesson? lesson, DateOnly today)
    {
        LessonId = lesson?.Id;
        if (lesson is null) return;
        ClassId = lesson.ClassId;
        if (lesson.Date <= today) Day = lesson.Date;
    }

    /// <summary>As it is kept.</summary>
    /// <param name="schoolId">The school.</param>
    /// <param name="id">Its id.</param>
    /// <param name="writtenAt">When it was first written down.</param>
    /// <param name="today">The day it is taken for where none is typed.</param>
    public Incident ToIncident(Guid schoolId, Guid id, DateTimeOffset writtenAt, DateOnly today) => new()
    {
        SchoolId = schoolId, Id = id, WrittenAt = writtenAt,
        Kind = Kind ?? 0, Day = Day ?? today, MinuteOfDay = Time is { } time ? time.Hour * HourMin + time.Minute : null,
        LessonId = LessonId, TaskId = TaskId,
        Place = (Place ?? "").Trim(), Happened = (Happened ?? "").Trim(), Done = (Done ?? "").Trim(), Changed = (Changed ?? "").Trim(),
        PupilIds = [.. PupilIds.Order()],
    };
}
