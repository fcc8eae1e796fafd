using Slantwise.Records;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Printing;

/// <summary>What is known around a lesson that is printed.</summary>
internal static class LessonAround
{
    /// <summary>Loads it where what is printed says something of it.</summary>
    public static async Task<LessonPlans> LoadAsync(IStore store, LessonRecord record, PrintKind kind, CancellationToken cancel) =>
        kind is PrintKind.Lesson or PrintKind.Pack or PrintKind.Risk ? await LessonPlans.LoadAsync(store, record, cancel) : LessonPlans.None;
}
