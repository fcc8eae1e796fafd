using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Lessons;

/// <summary>The lessons of a class as they stood when they were loaded. Loaded again, what has not changed is not read again.</summary>
/// <remarks>
/// Only the store says what has changed, so whoever wrote it makes no difference: this program, the command line, another server. An entry that arrives
/// while records are loaded is in them or is seen the next time.
/// </remarks>
public sealed class ClassRecords
{
    private readonly Dictionary<Guid, LessonStamp> _stamps;

    private ClassRecords(IReadOnlyList<LessonRecord> lessons, Dictionary<Guid, LessonStamp> stamps) => (Lessons, _stamps) = (lessons, stamps);

    /// <summary>The lessons' records, earliest first, those without a frozen sheet included. Empty where the school has no such class or it has no lesson.</summary>
    public IReadOnlyList<LessonRecord> Lessons { get; }

    /// <summary>Loads a class.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="classId">The class.</param>
    /// <param name="known">The same class as it was; none to load everything.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns><paramref name="known"/> itself where nothing has changed; otherwise records of which those that are the same are the same objects.</returns>
    public static async Task<ClassRecords> LoadAsync(IStore store, Guid schoolId, Guid classId, ClassRecords? known = null, CancellationToken cancel = default)
    {
        if (await ClassAround.LoadAsync(store, schoolId, classId, cancel) is not { } around) return known is { Lessons.Count: 0 } ? known : new([], []);
        var lessons = (await store.ListLessonsAsync(schoolId, cancel)).Where(l => l.ClassId == classId).ToList();
        var stamps = (await store.ListLessonStampsAsync(schoolId, classId, cancel)).ToDictionary(s => s.LessonId);
        var before = known?.Lessons.ToDictionary(r => r.Lesson.Id) ?? [];
        if (before.Count > 0 && ClassAround.Of(before.Values.First()) is var kept && kept.IsSameAs(around)) around = kept;

        var records = new List<LessonRecord>();
        foreach (var lesson in lessons)
        {
            // A lesson planned between the two questions has no stamp yet; it gets one the next time.
            var stamp = stamps.GetValueOrDefault(lesson.Id);
            var old = stamp is not null && known?._stamps.GetValueOrDefault(lesson.Id) == stamp ? before.GetValueOrDefault(lesson.Id) : null;
            if (old is not null && (old.Lesson.SheetId, old.Lesson.SheetVersion) != (lesson.SheetId, lesson.SheetVersion)) old = null;
            records.Add(old is null ? await around.LoadAsync(store, lesson, cancel) : around.Renewed(old, lesson));
        }
        return known is not null && records.SequenceEqual(known.Lessons, ReferenceEqualityComparer.Instance) ? known : new(records, stamps);
    }
}
