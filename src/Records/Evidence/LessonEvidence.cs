using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence;

/// <summary>What a lesson's entries say, computed anew each time. Levels and pupils are described, never put above one another.</summary>
public sealed record LessonEvidence
{
    /// <summary>The lesson.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The class taught.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>The class's name.</summary>
    public required string ClassName { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the lesson is called.</summary>
    public required string Title { get; init; }

    /// <summary>The tasks in the order of the sheet, then tasks with entries that are not on it.</summary>
    public required IReadOnlyList<TaskEvidence> Tasks { get; init; }

    /// <summary>Every current pupil of the class, by label, those without entries included.</summary>
    public required IReadOnlyList<PupilEvidence> Pupils { get; init; }

    /// <summary>The class on the whole.</summary>
    public required ClassEvidence Class { get; init; }

    /// <summary>Whom to ask what: safety first, then those of whom least is known; at most two a pupil.</summary>
    public required IReadOnlyList<Conference> Conferences { get; init; }

    /// <summary>Pupils marked absent, by label.</summary>
    public IReadOnlyList<Guid> AbsentPupilIds => Pupils.Where(p => p.AbsentLessonIds.Count > 0).Select(p => p.PupilId).ToList();

    /// <summary>Pupils not marked absent of whom nothing is written, by label.</summary>
    public IReadOnlyList<Guid> UnwrittenPupilIds => Pupils.Where(p => p.SetCount == 0 && p.AbsentLessonIds.Count == 0).Select(p => p.PupilId).ToList();

    /// <summary>Entries that hold but could be counted nowhere: no pupil, task or set.</summary>
    public required IReadOnlyList<Guid> UncountedEntryIds { get; init; }

    /// <summary>The evidence of a lesson.</summary>
    /// <param name="record">The lesson's record. Entries in any order; one given twice counts once; those of pupils who left count in the pooled numbers only.</param>
    public static LessonEvidence Of(LessonRecord record)
    {
        var reading = LessonReading.Of(record, 1);
        var gathered = Gathering.Of([reading]);
        return new LessonEvidence
        {
            LessonId = record.Lesson.Id,
            ClassId = record.Class.Id,
            ClassName = record.Class.Name,
            Date = record.Lesson.Date,
            Title = record.Lesson.Title,
            Tasks = gathered.Tasks,
            Pupils = gathered.Pupils,
            Class = gathered.Class,
            Conferences = gathered.Conferences,
            UncountedEntryIds = reading.UncountedEntryIds,
        };
    }
}
