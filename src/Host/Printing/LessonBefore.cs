using Slantwise.Records;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Printing;

/// <summary>The class's last lesson with results before one that is printed.</summary>
internal static class LessonBefore
{
    /// <summary>Its record; none where there is none, or where what is printed does not say anything of it.</summary>
    public static async Task<LessonRecord?> FindAsync(IStore store, LessonRecord record, PrintKind kind, CancellationToken cancel)
    {
        if (kind is not (PrintKind.Lesson or PrintKind.Pack)) return null;
        var lessons = await store.ListLessonsAsync(record.School.Id, cancel);
        var written = (await store.ListLessonStampsAsync(record.School.Id, record.Class.Id, cancel)).Where(s => s.EntryCount > 0).Select(s => s.LessonId).ToHashSet();
        var before = lessons.Where(l => l.ClassId == record.Class.Id && l.Date < record.Lesson.Date && written.Contains(l.Id)).MaxBy(l => l.Date);
        return before is null ? null : await LessonRecord.LoadAsync(store, record.School.Id, before.Id, cancel);
    }
}
