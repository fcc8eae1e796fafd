using Slantwise.Records.Entries;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Lessons;

/// <summary>Everything known about one lesson: what evidence is computed from, and what a new entry is checked against.</summary>
public sealed record LessonRecord
{
    /// <summary>The school, with its policy.</summary>
    public required School School { get; init; }

    /// <summary>The class taught.</summary>
    public required SchoolClass Class { get; init; }

    /// <summary>The lesson.</summary>
    public required Lesson Lesson { get; init; }

    /// <summary>The frozen sheet in use; none until it was printed or opened.</summary>
    public SheetVersion? Sheet { get; init; }

    /// <summary>The class's current pupils, by label.</summary>
    public IReadOnlyList<Pupil> Pupils { get; init; } = [];

    /// <summary>The restrictions of those pupils, those that no longer hold included.</summary>
    public IReadOnlyList<Restriction> Restrictions { get; init; } = [];

    /// <summary>Every entry of the lesson, superseded ones included.</summary>
    public IReadOnlyList<Entry> Entries { get; init; } = [];

    /// <summary>Loads a lesson's record.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>None if the school has no such lesson.</returns>
    public static async Task<LessonRecord?> LoadAsync(
        IStore store, Guid schoolId, Guid lessonId, CancellationToken cancel = default)
    {
        if (await store.FindSchoolAsync(schoolId, cancel) is not { } school) return null;
        if (await store.FindLessonAsync(schoolId, lessonId, cancel) is not { } lesson) return null;
        var schoolClass = (await store.ListClassesAsync(schoolId, cancel)).Single(c => c.Id == lesson.ClassId);
        var pupils = await store.ListClassPupilsAsync(schoolId, lesson.ClassId, cancel);
        var pupilIds = pupils.Select(p => p.Id).ToHashSet();
        var restrictions = await store.ListRestrictionsAsync(schoolId, cancel);
        return new LessonRecord
        {
            School = school,
            Class = schoolClass,
            Lesson = lesson,
            Sheet = lesson is { SheetId: { } sheetId, SheetVersion: { } version }
                ? await store.FindSheetVersionAsync(schoolId, sheetId, version, cancel)
                : null,
            Pupils = pupils,
            Restrictions = restrictions.Where(r => pupilIds.Contains(r.PupilId)).ToList(),
            Entries = await store.ListEntriesAsync(schoolId, lessonId, cancel),
        };
    }
}
