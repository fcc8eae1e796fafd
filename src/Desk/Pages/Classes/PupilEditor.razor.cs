using Microsoft.AspNetCore.Components;
using Slantwise.Records.Schools;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>One pupil's code and name; restrictions and how tasks are done are parts of their own; leaving the class; erasing.</summary>
public partial class PupilEditor
{
    private string _code = "";
    private string _name = "";
    private string? _nameFinding;
    private string? _nameSaved;
    private string? _erasing;
    private string? _failure;

    /// <summary>The pupil.</summary>
    [Parameter, EditorRequired]
    public Pupil Pupil { get; set; } = null!;

    /// <summary>The class the page shows.</summary>
    [Parameter, EditorRequired]
    public SchoolClass Class { get; set; } = null!;

    /// <summary>The pupil's restrictions, those that no longer hold included.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<Restriction> Restrictions { get; set; } = [];

    /// <summary>Called when something was saved.</summary>
    [Parameter]
    public EventCallback OnChanged { get; set; }

    /// <inheritdoc />
    protected override void OnInitialized() => (_code, _name) = (Pupil.Code, Pupil.DisplayName ?? "");

    private async Task SaveNameAsync()
    {
        _nameSaved = null;
        var changed = Pupil with { Code = _code.Trim(), DisplayName = string.IsNullOrWhiteSpace(_name) ? null : _name.Trim() };
        _nameFinding = RosterNames.FindingOf(changed, await Desk.Store.ListPupilsAsync(Desk.SchoolId))
            ?? await DoAsync(() => Desk.Store.SaveRosterAsync(Desk.SchoolId, new() { Pupils = [changed] }));
        if (_nameFinding is null) _nameSaved = Say("Saved");
    }

    private async Task LeaveAsync()
    {
        var left = new Enrolment { SchoolId = Desk.SchoolId, ClassId = Class.Id, PupilId = Pupil.Id, IsCurrent = false };
        _failure = await DoAsync(() => Desk.Store.SaveRosterAsync(Desk.SchoolId, new() { Enrolments = [left] }));
    }

    private async Task AskToEraseAsync()
    {
        var (entryCount, lessonCount) = (0, 0);
        foreach (var lesson in await Desk.Store.ListLessonsAsync(Desk.SchoolId))
        {
            var count = (await Desk.Store.ListEntriesAsync(Desk.SchoolId, lesson.Id)).Count(e => e.PupilId == Pupil.Id);
            entryCount += count;
            lessonCount += count > 0 ? 1 : 0;
        }
        var classCount = (await Desk.Store.ListEnrolmentsAsync(Desk.SchoolId)).Count(e => e.PupilId == Pupil.Id);
        _erasing = Say("EraseWhatGoes", Pupil.Label, classCount, Restrictions.Count, entryCount, lessonCount);
    }

    private async Task EraseAsync() =>
        _failure = await DoAsync(() => Desk.ErasePupilAsync(Pupil.Id));

    private async Task<string?> DoAsync(Func<Task> save)
    {
        var failure = await Desk.TryAsync(save);
        if (failure is null) await OnChanged.InvokeAsync();
        return failure;
    }
}
