using System.Globalization;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>Whom a sheet being made includes in the class the teacher looks at. What a class did is loaded and fitted once; the levels may change as often as they like.</summary>
/// <param name="store">Where the records are.</param>
/// <param name="schoolId">The school.</param>
/// <param name="today">The day to look at: restrictions that hold then count.</param>
public sealed class ReachSession(IStore store, Guid schoolId, Func<DateOnly> today)
{
    private IReadOnlyList<LessonRecord> _lessons = [];
    private IReadOnlyList<Pupil> _pupils = [];
    private IReadOnlyList<Restriction> _restrictions = [];
    private Guid? _loadedId;
    private ReachBasis? _basis;

    /// <summary>The school's classes.</summary>
    public IReadOnlyList<SchoolClass> Classes { get; private set; } = [];

    /// <summary>The class that is looked at; none until one is picked.</summary>
    public Guid? ClassId { get; set; }

    /// <summary>What the class that is looked at is called; empty for none.</summary>
    public string ClassName => Classes.FirstOrDefault(c => c.Id == ClassId)?.Name ?? "";

    /// <summary>Where the band begins, in tries of 100.</summary>
    public int LowOf100 { get; set; } = 60;

    /// <summary>Where it ends, in tries of 100.</summary>
    public int HighOf100 { get; set; } = 90;

    /// <summary>Whether the two ends make a band.</summary>
    public bool IsBand => LowOf100 >= 1 && LowOf100 < HighOf100 && HighOf100 <= 99;

    /// <summary>How often the class was fitted: once as long as only the choice of levels changes.</summary>
    public int FitCount { get; private set; }

    /// <summary>Loads the classes and picks the one that used the sheet last, or the only one.</summary>
    /// <param name="sheetId">The sheet.</param>
    public async Task OpenAsync(Guid sheetId)
    {
        Classes = await store.ListClassesAsync(schoolId);
        var used = (await store.ListLessonsAsync(schoolId)).LastOrDefault(l => l.SheetId == sheetId && Classes.Any(c => c.Id == l.ClassId));
        ClassId ??= used?.ClassId ?? (Classes is [var only] ? only.Id : null);
    }

    /// <summary>Looks at a sheet.</summary>
    /// <param name="sheet">As it would be printed now.</param>
    /// <param name="kept">The tasks as they are kept.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="cancel">Given up when the sheet has changed again.</param>
    /// <returns>One a task, in the order of the sheet. Empty without a class or without a band.</returns>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public async Task<IReadOnlyList<ReachView>> LookAsync(SheetContent sheet, IReadOnlyList<MovementTask> kept, SafetyPolicy policy, CancellationToken cancel)
    {
        if (ClassId is not { } classId || !IsBand || sheet.Tasks.Count == 0) return [];
        if (_loadedId != classId) await LoadAsync(classId, cancel);
        var (band, day, culture) = (new ReachBand(LowOf100 / 100.0, HighOf100 / 100.0), today(), CultureInfo.CurrentUICulture);
        var (basis, lessons, pupils, restrictions) = (_basis, _lessons, _pupils, _restrictions);
        // Away from the page's own thread, so that typing goes on.
        var (used, views) = await Task.Run(
            () =>
            {
                var now = basis?.Covers(sheet) == true ? basis : ReachBasis.Of(sheet, kept, lessons, pupils, new ResponseWork(Cancellation: cancel));
                cancel.ThrowIfCancellationRequested();
                var reach = now.Of(sheet, policy, restrictions, day, band);
                return (now, reach.Zip(sheet.Tasks, (r, task) => ReachView.Of(r, task, band, culture)).ToList());
            },
            cancel);
        cancel.ThrowIfCancellationRequested();
        if (used != _basis) FitCount++;
        _basis = used;
        return views;
    }

    private async Task LoadAsync(Guid classId, CancellationToken cancel)
    {
        var lessons = await LessonRecord.LoadClassAsync(store, schoolId, classId, cancel);
        var pupils = await store.ListClassPupilsAsync(schoolId, classId, cancel);
        var ids = pupils.Select(p => p.Id).ToHashSet();
        var restrictions = (await store.ListRestrictionsAsync(schoolId, cancel)).Where(r => ids.Contains(r.PupilId)).ToList();
        cancel.ThrowIfCancellationRequested();
        (_lessons, _pupils, _restrictions, _basis, _loadedId) = (lessons, pupils, restrictions, null, classId);
    }
}
