using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Progress;

/// <summary>How far the work on a lesson has come.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="ClassName">The class taught.</param>
/// <param name="SheetName">The sheet chosen; empty before.</param>
/// <param name="PupilCount">Pupils in the class now.</param>
/// <param name="EnteredCount">Those of them whose sheet is typed in or who were noted as absent.</param>
/// <param name="Today">The day it is looked at.</param>
public sealed record LessonProgress(
    Lesson Lesson, string ClassName, string SheetName, int PupilCount, int EnteredCount, DateOnly Today)
{
    /// <summary>What the lesson waits for.</summary>
    public LessonStep Step => this switch
    {
        { Lesson.SheetId: null } => LessonStep.ChooseSheet,
        { Lesson.SheetVersion: null } => LessonStep.Print,
        { EnteredCount: 0 } when Lesson.Date > Today => LessonStep.Print,
        { WaitingCount: > 0 } or { EnteredCount: 0 } => LessonStep.EnterResults,
        _ => LessonStep.SeeEvidence,
    };

    /// <summary>Pupils whose sheet is not typed in.</summary>
    public int WaitingCount => PupilCount - EnteredCount;

    /// <summary>Where the work goes on.</summary>
    public string NextAddress => Step switch
    {
        LessonStep.EnterResults => $"/lessons/{Lesson.Id}/results",
        LessonStep.SeeEvidence => $"/lessons/{Lesson.Id}/evidence",
        _ => $"/lessons/{Lesson.Id}",
    };

    /// <summary>The progress of some lessons of one school, in the order given.</summary>
    /// <param name="desk">The school, loaded.</param>
    /// <param name="lessons">Its lessons to look at. Each costs a reading of its entries.</param>
    /// <param name="cancel">Stops the reading.</param>
    public static async Task<IReadOnlyList<LessonProgress>> ListAsync(
        DeskSchool desk, IEnumerable<Lesson> lessons, CancellationToken cancel = default)
    {
        var classes = (await desk.Store.ListClassesAsync(desk.SchoolId, cancel)).ToDictionary(c => c.Id, c => c.Name);
        var sheets = (await desk.Store.ListSheetsAsync(desk.SchoolId, cancel)).ToDictionary(s => s.Id, s => s.Name);
        var pupils = (await desk.Store.ListEnrolmentsAsync(desk.SchoolId, cancel))
            .Where(e => e.IsCurrent)
            .ToLookup(e => e.ClassId, e => e.PupilId);
        var list = new List<LessonProgress>();
        foreach (var lesson in lessons)
        {
            var entered = lesson.SheetVersion is null
                ? []
                : Entered(await desk.Store.ListEntriesAsync(desk.SchoolId, lesson.Id, cancel));
            list.Add(new LessonProgress(
                lesson,
                classes.GetValueOrDefault(lesson.ClassId, ""),
                lesson.SheetId is { } sheetId ? sheets.GetValueOrDefault(sheetId, "") : "",
                pupils[lesson.ClassId].Count(),
                pupils[lesson.ClassId].Count(entered.Contains),
                desk.Today));
        }
        return list;
    }

    // Being noted as present says nothing about a sheet; being noted as absent says there is none to type in.
    private static HashSet<Guid> Entered(IReadOnlyList<Entry> entries) => EntryLog.Current(entries)
        .Where(e => e.PupilId is not null && e.Fact is not (Presence { IsPresent: true } or Visit or Note))
        .Select(e => e.PupilId!.Value)
        .ToHashSet();
}
