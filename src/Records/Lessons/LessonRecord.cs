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

    /// <summary>How tasks are done by single ones of those pupils.</summary>
    public IReadOnlyList<PupilAdaptation> Adaptations { get; init; } = [];

    /// <summary>Every entry of the lesson, superseded ones included.</summary>
    public IReadOnlyList<Entry> Entries { get; init; } = [];

    /// <summary>How a pupil does a task, in pupil words.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="taskId">The task.</param>
    /// <returns>Empty where nothing is kept: as everybody does it.</returns>
    public string AdaptationFor(Guid pupilId, Guid taskId) => Adaptations.FirstOrDefault(a => a.PupilId == pupilId && a.TaskId == taskId)?.Text ?? "";

    /// <summary>Loads a lesson's record.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>None if the school has no such lesson.</returns>
    public static async Task<LessonRecord?> LoadAsync(
        IStore store, Guid schoolId, Guid lessonId, CancellationToken cancel = default)
    {
        if (await store.FindLessonAsync(schoolId, lessonId, cancel) is not { } lesson) return null;
        if (await ClassAround.LoadAsync(store, schoolId, lesson.ClassId, cancel) is not { } around) return null;
        return await around.LoadAsync(store, lesson, cancel);
    }

    /// <summary>Loads the records of all lessons of a class; what they share is loaded once.</summary>
    /// <param name="store">Where to load them from.</param>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="classId">The class.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>Earliest first, those without a frozen sheet included. Empty if the school has no such class or it has no lesson.</returns>
    public static async Task<IReadOnlyList<LessonRecord>> LoadClassAsync(
        IStore store, Guid schoolId, Guid classId, CancellationToken cancel = default) =>
        (await ClassRecords.LoadAsync(store, schoolId, classId, null, cancel)).Lessons;
}
