using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence;

/// <summary>What the entries of several lessons of one class say together.</summary>
public sealed record UnitEvidence
{
    /// <summary>The class taught; none where no lesson was given.</summary>
    public Guid? ClassId { get; init; }

    /// <summary>The class's name; empty where no lesson was given.</summary>
    public string ClassName { get; init; } = "";

    /// <summary>The lessons, earliest first.</summary>
    public required IReadOnlyList<UnitLesson> Lessons { get; init; }

    /// <summary>The tasks of all sheets, in the order of the latest sheet, then earlier ones; levels likewise.</summary>
    public required IReadOnlyList<TaskEvidence> Tasks { get; init; }

    /// <summary>Every pupil of the class as of the latest lesson given, by label.</summary>
    public required IReadOnlyList<PupilEvidence> Pupils { get; init; }

    /// <summary>The class on the whole.</summary>
    public required ClassEvidence Class { get; init; }

    /// <summary>Whom to ask what, from the latest lesson with entries, and over all lessons where many tries are needed.</summary>
    public required IReadOnlyList<Conference> Conferences { get; init; }

    /// <summary>Entries that hold but could be counted nowhere.</summary>
    public required IReadOnlyList<Guid> UncountedEntryIds { get; init; }

    /// <summary>The evidence of a unit.</summary>
    /// <param name="lessons">Lessons of one class, any number; they are put in order of their days.</param>
    /// <exception cref="ArgumentException">Lessons of more than one class, or one lesson twice.</exception>
    public static UnitEvidence Of(IReadOnlyList<LessonRecord> lessons)
    {
        if (lessons.Select(r => r.Class.Id).Distinct().Count() > 1)
            throw new ArgumentException("A unit holds lessons of one class.", nameof(lessons));
        if (lessons.Select(r => r.Lesson.Id).Distinct().Count() < lessons.Count)
            throw new ArgumentException("A unit holds each lesson once.", nameof(lessons));

        // The order of a stable sort keeps two lessons of one day as they were given.
        var readings = lessons.OrderBy(r => r.Lesson.Date).Select((record, i) => LessonReading.Of(record, i + 1)).ToList();
        var gathered = Gathering.Of(readings);
        return new UnitEvidence
        {
            ClassId = lessons.Count == 0 ? null : lessons[0].Class.Id,
            ClassName = lessons.Count == 0 ? "" : lessons[0].Class.Name,
            Lessons = readings.Select(r => new UnitLesson(r.LessonId, r.LessonNumber, r.Record.Lesson.Date, r.Record.Lesson.Title)).ToList(),
            Tasks = gathered.Tasks,
            Pupils = gathered.Pupils,
            Class = gathered.Class,
            Conferences = gathered.Conferences,
            UncountedEntryIds = readings.SelectMany(r => r.UncountedEntryIds).ToList(),
        };
    }
}
