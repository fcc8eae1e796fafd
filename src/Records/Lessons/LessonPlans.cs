using System.Globalization;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Halls;
using Slantwise.Records.Safety;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Lessons;

/// <summary>What is known around one lesson: what was planned for it on pages of their own, and what its class did before.</summary>
public sealed record LessonPlans
{
    /// <summary>Nothing planned and nothing known from before.</summary>
    public static LessonPlans None { get; } = new();

    /// <summary>The class's last lesson with results before this one, if it can be one with the same tasks; none where there is none.</summary>
    public LessonRecord? Before { get; init; }

    /// <summary>The designs of the school's own tasks, by task id; the library's come with the program.</summary>
    public IReadOnlyList<TaskDesign> OwnDesigns { get; init; } = [];

    /// <summary>The lesson's hall and what lies where; none where it was not planned.</summary>
    public LessonHall? Hall { get; init; }

    /// <summary>What its risk page is made of; none to leave that page out.</summary>
    public RiskMaterial? Risk { get; init; }

    /// <summary>Loads what is known around a lesson.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<LessonPlans> LoadAsync(IStore store, LessonRecord record, CancellationToken cancel = default)
    {
        IReadOnlyList<TaskDesign> own = [.. (await store.ListTaskDesignsAsync(record.School.Id, cancel)).Select(d => d.Design)];
        return new LessonPlans
        {
            Before = await FindBeforeAsync(store, record, record.Sheet?.Content, cancel),
            OwnDesigns = own,
            Hall = await LessonHall.LoadAsync(store, record.Lesson, cancel),
            Risk = await RiskMaterial.LoadAsync(store, record, own, cancel),
        };
    }

    /// <summary>The words of a task's design: the school's own, else the library's.</summary>
    /// <param name="taskId">The task.</param>
    /// <param name="language">The language wanted; English, then any, where the design lacks it.</param>
    /// <returns>None for a task without a design.</returns>
    public TaskWords? WordsOf(Guid taskId, CultureInfo language)
    {
        var design = OwnDesigns.FirstOrDefault(d => d.Id == taskId) ?? TaskLibrary.Find(taskId);
        return design?.Words.GetValueOrDefault(language.TwoLetterISOLanguageName) ?? design?.Words.GetValueOrDefault("en") ?? design?.Words.Values.FirstOrDefault();
    }

    /// <summary>The class's last lesson with results before this one in which one of these tasks was practised; where there is none, the last one with results.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="content">What is worked on in it; none where that is not known.</param>
    /// <param name="cancel">Stops the loading.</param>
    /// <returns>None where the class has no earlier lesson with results.</returns>
    public static async Task<LessonRecord?> FindBeforeAsync(IStore store, LessonRecord record, SheetContent? content, CancellationToken cancel = default)
    {
        var (schoolId, lesson) = (record.School.Id, record.Lesson);
        var written = (await store.ListLessonStampsAsync(schoolId, lesson.ClassId, cancel)).Where(s => s.EntryCount > 0).Select(s => s.LessonId).ToHashSet();
        var earlier = (await store.ListLessonsAsync(schoolId, cancel))
            .Where(l => l.ClassId == lesson.ClassId && l.Date < lesson.Date && written.Contains(l.Id)).OrderByDescending(l => l.Date).ToList();
        var found = earlier.FirstOrDefault();
        foreach (var one in content is null ? [] : earlier)
        {
            if (one is not { SheetId: { } sheetId, SheetVersion: { } version }) continue;
            if (await store.FindSheetVersionAsync(schoolId, sheetId, version, cancel) is not { } sheet || !LessonDebrief.SharesTask(content!, sheet.Content)) continue;
            found = one;
            break;
        }
        return found is null ? null : await LessonRecord.LoadAsync(store, schoolId, found.Id, cancel);
    }
}
