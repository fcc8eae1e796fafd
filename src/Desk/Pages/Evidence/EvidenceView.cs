using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.SelfChecks;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Evidence of a lesson or of a unit, as the same sections show it.</summary>
public sealed record EvidenceView
{
    /// <summary>What it is about.</summary>
    public required EvidenceScope Scope { get; init; }

    /// <summary>The lessons it rests on, earliest first.</summary>
    public required IReadOnlyList<UnitLesson> Lessons { get; init; }

    /// <summary>Per task.</summary>
    public required IReadOnlyList<TaskEvidence> Tasks { get; init; }

    /// <summary>Per pupil, by label.</summary>
    public required IReadOnlyList<PupilEvidence> Pupils { get; init; }

    /// <summary>The class on the whole.</summary>
    public required ClassEvidence Class { get; init; }

    /// <summary>Whom to ask what.</summary>
    public required IReadOnlyList<Conference> Conferences { get; init; }

    /// <summary>Entries that hold and count nowhere.</summary>
    public required IReadOnlyList<Guid> UncountedEntryIds { get; init; }

    /// <summary>Checks of one thing from two devices; none where there are none.</summary>
    public ObserverChecks? Observers { get; init; }

    /// <summary>Whether anything was written at all.</summary>
    public bool HasEntries => Class.SetCount > 0;

    /// <summary>The evidence of one lesson.</summary>
    /// <param name="record">The lesson's record.</param>
    public static EvidenceView Of(LessonRecord record)
    {
        var evidence = LessonEvidence.Of(record);
        return new()
        {
            Scope = new(record.Lesson.Id, record.Class.Id),
            Lessons = [new(record.Lesson.Id, 1, record.Lesson.Date, record.Lesson.Title)],
            Tasks = evidence.Tasks,
            Pupils = evidence.Pupils,
            Class = evidence.Class,
            Conferences = evidence.Conferences,
            UncountedEntryIds = evidence.UncountedEntryIds,
            Observers = ObserverChecks.Of([record]),
        };
    }

    /// <summary>The evidence of a class over its lessons.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="records">Its lessons, any order; may be empty.</param>
    public static EvidenceView Of(Guid classId, IReadOnlyList<LessonRecord> records)
    {
        var evidence = UnitEvidence.Of(records);
        return new()
        {
            Scope = new(null, classId),
            Lessons = evidence.Lessons,
            Tasks = evidence.Tasks,
            Pupils = evidence.Pupils,
            Class = evidence.Class,
            Conferences = evidence.Conferences,
            UncountedEntryIds = evidence.UncountedEntryIds,
            Observers = ObserverChecks.Of(records),
        };
    }

    /// <summary>The records of a class's lessons that have a frozen sheet, earliest first.</summary>
    /// <param name="desk">The school, loaded.</param>
    /// <param name="classId">The class.</param>
    public static async Task<IReadOnlyList<LessonRecord>> LoadUnitAsync(DeskSchool desk, Guid classId) =>
        (await UnitReadings.LoadAsync(desk, classId)).Records;
}
