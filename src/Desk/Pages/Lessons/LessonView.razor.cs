using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Pages.Sheets;
using Slantwise.Desk.Progress;
using Slantwise.Records.Checks;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>One lesson: what comes next, printing, who is offered what, the plan.</summary>
public partial class LessonView
{
    private LessonRecord? _record;
    private LessonProgress? _progress;
    private IReadOnlyList<SchoolClass> _classes = [];
    private IReadOnlyList<Sheet> _sheets = [];
    private Sheet? _sheet;
    private IReadOnlyList<Finding> _sheetFindings = [];
    private LessonDebrief? _debrief;
    private string? _failure;

    /// <summary>The lesson shown.</summary>
    [Parameter]
    public Guid Id { get; set; }

    private SheetContent Shown => _record!.Sheet?.Content ?? _sheet!.Draft;

    private bool IsDraftNewer => _record!.Sheet is { } printed && !SheetDraft.AreAlike(printed.Content, _sheet!.Draft);

    // Results refer to the levels and cues of the version they were taken with.
    private bool CanPrepare => (_record!.Sheet is null || IsDraftNewer) && _record.Entries.Count == 0;

    private string PreparedSentence => _record!.Sheet is not { } printed
        ? Say("NotPreparedYet")
        : (IsDraftNewer, _record.Entries.Count) switch
        {
            (false, _) => Say("PreparedSame", printed.Version),
            (true, 0) => Say("PreparedDiffers", printed.Version),
            _ => Say("PreparedStays", printed.Version),
        };

    /// <inheritdoc />
    protected override Task LoadAsync() => ReloadAsync();

    private async Task ReloadAsync()
    {
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Id);
        if (_record is null) return;
        _progress = (await LessonProgress.ListAsync(Desk, [_record.Lesson]))[0];
        _classes = await Desk.Store.ListClassesAsync(Desk.SchoolId);
        _sheets = await Desk.Store.ListSheetsAsync(Desk.SchoolId);
        _sheet = _sheets.FirstOrDefault(s => s.Id == _record.Lesson.SheetId);
        _debrief = _sheet is null ? null : LessonDebrief.Of(Shown, await LessonPlans.FindBeforeAsync(Desk.Store, _record, Shown));
        _sheetFindings = _sheet is null ? [] : SheetCheck.Of(CanPrepare ? _sheet.Draft : Shown, Desk.School.Policy);
    }

    private async Task PrepareAsync()
    {
        if (_sheetFindings.Any(f => f.Severity == FindingSeverity.Refused))
        {
            _failure = Say("FixSheetFirst");
            return;
        }
        _failure = await Desk.TryAsync(async () =>
        {
            var version = await Desk.Store.FreezeSheetAsync(Desk.SchoolId, _sheet!.Id);
            await Desk.Store.SaveLessonAsync(_record!.Lesson with { SheetVersion = version.Version });
        });
        if (_failure is null) await ReloadAsync();
    }
}
