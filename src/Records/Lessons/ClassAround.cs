using Slantwise.Records.Schools;

namespace Slantwise.Records.Lessons;

/// <summary>What the lessons of a class share.</summary>
internal sealed record ClassAround(
    School School, SchoolClass Class, IReadOnlyList<Pupil> Pupils, IReadOnlyList<Restriction> Restrictions, IReadOnlyList<PupilAdaptation> Adaptations)
{
    public static ClassAround Of(LessonRecord record) => new(record.School, record.Class, record.Pupils, record.Restrictions, record.Adaptations);

    /// <summary>Loads it; none if the school has no such class.</summary>
    public static async Task<ClassAround?> LoadAsync(IStore store, Guid schoolId, Guid classId, CancellationToken cancel)
    {
        if (await store.FindSchoolAsync(schoolId, cancel) is not { } school) return null;
        if ((await store.ListClassesAsync(schoolId, cancel)).SingleOrDefault(c => c.Id == classId) is not { } taught) return null;
        var pupils = await store.ListClassPupilsAsync(schoolId, classId, cancel);
        var pupilIds = pupils.Select(p => p.Id).ToHashSet();
        var restrictions = await store.ListRestrictionsAsync(schoolId, cancel);
        var adaptations = await store.ListAdaptationsAsync(schoolId, cancel);
        return new ClassAround(
            school, taught, pupils, restrictions.Where(r => pupilIds.Contains(r.PupilId)).ToList(), adaptations.Where(a => pupilIds.Contains(a.PupilId)).ToList());
    }

    public bool IsSameAs(ClassAround other) =>
        School == other.School && Class == other.Class && Pupils.SequenceEqual(other.Pupils) && Restrictions.SequenceEqual(other.Restrictions)
        && Adaptations.SequenceEqual(other.Adaptations);

    public async Task<LessonRecord> LoadAsync(IStore store, Lesson lesson, CancellationToken cancel) => new()
    {
        School = School,
        Class = Class,
        Lesson = lesson,
        Sheet = lesson is { SheetId: { } sheetId, SheetVersion: { } version }
            ? await store.FindSheetVersionAsync(lesson.SchoolId, sheetId, version, cancel)
            : null,
        Pupils = Pupils,
        Restrictions = Restrictions,
        Adaptations = Adaptations,
        Entries = await store.ListEntriesAsync(lesson.SchoolId, lesson.Id, cancel),
    };

    /// <summary>A record whose entries and sheet are as they were: itself where all else is, too.</summary>
    public LessonRecord Renewed(LessonRecord old, Lesson lesson)
    {
        var isSame = old.Lesson == lesson;
        return isSame && ReferenceEquals(old.Pupils, Pupils)
            ? old
            : old with { School = School, Class = Class, Lesson = isSame ? old.Lesson : lesson, Pupils = Pupils, Restrictions = Restrictions, Adaptations = Adaptations };
    }
}
