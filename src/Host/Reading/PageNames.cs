using System.Globalization;
using Slantwise.Records;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Host.Reading;

/// <summary>The names that a page's answer shows: pupils' codes, lessons' classes and days, what stands on the sheets.</summary>
internal sealed class PageNames
{
    private readonly Dictionary<Guid, Pupil> _pupils;
    private readonly Dictionary<Guid, Lesson> _lessons;
    private readonly Dictionary<Guid, string> _classes;
    private readonly Dictionary<Guid, SheetContent> _sheets = [];

    private PageNames(IEnumerable<Pupil> pupils, IEnumerable<Lesson> lessons, IEnumerable<SchoolClass> classes)
    {
        _pupils = pupils.ToDictionary(p => p.Id);
        _lessons = lessons.ToDictionary(l => l.Id);
        _classes = classes.ToDictionary(c => c.Id, c => c.Name);
    }

    public static async Task<PageNames> LoadAsync(IStore store, Guid schoolId, CancellationToken cancel)
    {
        var names = new PageNames(
            await store.ListPupilsAsync(schoolId, cancel), await store.ListLessonsAsync(schoolId, cancel), await store.ListClassesAsync(schoolId, cancel));
        foreach (var lesson in names._lessons.Values)
        {
            if (lesson is { SheetId: { } sheetId, SheetVersion: { } version } && await store.FindSheetVersionAsync(schoolId, sheetId, version, cancel) is { } sheet)
                names._sheets[lesson.Id] = sheet.Content;
        }
        return names;
    }

    public string? CodeOf(Guid? pupilId) => pupilId is { } id ? _pupils.GetValueOrDefault(id)?.Code : null;

    public Lesson? LessonOf(Scan scan) => scan.LessonId is { } id ? _lessons.GetValueOrDefault(id) : null;

    public string? ClassOf(Scan scan) => LessonOf(scan) is { } lesson ? _classes.GetValueOrDefault(lesson.ClassId) : null;

    public SheetContent? SheetOf(Scan scan) => scan.LessonId is { } id ? _sheets.GetValueOrDefault(id) : null;

    /// <summary>What a form is called in a line and in a file's name: the pupil's code, else what else is known of it.</summary>
    public string Called(Scan scan) => CodeOf(scan.PupilId)
        ?? (scan.SpareNumber is { } number ? "spare-" + number.ToString(CultureInfo.InvariantCulture) : scan.IsObservation ? "observation" : "unknown");
}
