using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Safety;

/// <summary>What a risk page needs beside the lesson's record.</summary>
public sealed record RiskMaterial
{
    /// <summary>The sheet: as it was printed or opened, or as it stands. None where the lesson has none.</summary>
    public SheetContent? Content { get; init; }

    /// <summary>The designs of the school's own tasks.</summary>
    public IReadOnlyList<TaskDesign> Designs { get; init; } = [];

    /// <summary>The school's log, the latest first.</summary>
    public IReadOnlyList<Incident> Incidents { get; init; } = [];

    /// <summary>What the teacher wrote on the page.</summary>
    public RiskNotes Notes { get; init; } = new();

    /// <summary>Loads it.</summary>
    /// <param name="store">Where to load it from.</param>
    /// <param name="record">The lesson.</param>
    /// <param name="designs">The designs of the school's own tasks, where they are at hand; else they are loaded.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<RiskMaterial> LoadAsync(IStore store, LessonRecord record, IReadOnlyList<TaskDesign>? designs = null, CancellationToken cancel = default)
    {
        var (schoolId, lesson) = (record.School.Id, record.Lesson);
        return new RiskMaterial
        {
            Content = record.Sheet?.Content ?? (lesson.SheetId is { } sheetId ? (await store.FindSheetAsync(schoolId, sheetId, cancel))?.Draft : null),
            Designs = designs ?? [.. (await store.ListTaskDesignsAsync(schoolId, cancel)).Select(d => d.Design)],
            Incidents = await store.ListIncidentsAsync(schoolId, cancel),
            Notes = (await store.FindLessonRiskAsync(schoolId, lesson.Id, cancel))?.Notes ?? new(),
        };
    }
}
