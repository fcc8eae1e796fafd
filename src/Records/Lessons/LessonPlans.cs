using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Safety;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Lessons;

/// <summary>What is known around one lesson: what was planned for it on pages of their own, and what its class did before.</summary>
public sealed record LessonPlans
{
    /// <summary>Nothing planned and nothing known from before.</summary>
    public static LessonPlans None { get; } = new();

    /// <summary>The class's last lesson with results before this one; none where there is none.</summary>
    public LessonRecord? Before { get; init; }

    /// <summary>The designs of the school's own tasks, by task id; the library's come with the program.</summary>
    public IReadOnlyList<TaskDesign> OwnDesigns { get; init; } = [];

    /// <summary>Where things are in the lesson; none where it was not planned.</summary>
    public LessonSpace? Space { get; init; }

    /// <summary>The hall of <see cref="Space"/>; none where there is none.</summary>
    public SchoolHall? Hall { get; init; }

    /// <summary>The lesson's groups; none where they were not made.</summary>
    public LessonGroups? Groups { get; init; }

    /// <summary>What the teacher wrote on the risk page; none where nothing was written.</summary>
    public LessonRisk? Risk { get; init; }

    /// <summary>Loads what is known around a lesson.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<LessonPlans> LoadAsync(IStore store, LessonRecord record, CancellationToken cancel = default)
    {
        var (schoolId, lesson) = (record.School.Id, record.Lesson);
        var space = await store.FindLessonSpaceAsync(schoolId, lesson.Id, cancel);
        return new LessonPlans
        {
            Before = await BeforeAsync(store, record, cancel),
            OwnDesigns = [.. (await store.ListTaskDesignsAsync(schoolId, cancel)).Select(d => d.Design)],
            Space = space,
            Hall = space is null ? null : (await store.ListHallsAsync(schoolId, cancel)).FirstOrDefault(h => h.Id == space.HallId),
            Groups = (await store.ListLessonGroupsAsync(schoolId, cancel)).FirstOrDefault(g => g.LessonId == lesson.Id),
            Risk = await store.FindLessonRiskAsync(schoolId, lesson.Id, cancel),
        };
    }

    private static async Task<LessonRecord?> BeforeAsync(IStore store, LessonRecord record, CancellationToken cancel)
    {
        var (schoolId, lesson) = (record.School.Id, record.Lesson);
        var written = (await store.ListLessonStampsAsync(schoolId, lesson.ClassId, cancel)).Where(s => s.EntryCount > 0).Select(s => s.LessonId).ToHashSet();
        var before = (await store.ListLessonsAsync(schoolId, cancel)).Where(l => l.ClassId == lesson.ClassId && l.Date < lesson.Date && written.Contains(l.Id)).MaxBy(l => l.Date);
        return before is null ? null : await LessonRecord.LoadAsync(store, schoolId, before.Id, cancel);
    }
}
