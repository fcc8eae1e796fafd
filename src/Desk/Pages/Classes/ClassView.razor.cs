using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Progress;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>One class: its pupils with their restrictions, its lessons, how long it is kept.</summary>
public partial class ClassView
{
    private SchoolClass? _class;
    private IReadOnlyList<Pupil> _pupils = [];
    private ILookup<Guid, Restriction> _restrictions = Array.Empty<Restriction>().ToLookup(r => r.PupilId);
    private IReadOnlyList<LessonProgress> _lessons = [];
    private Guid? _open;
    private string _name = "";
    private DateOnly? _keepUntil;
    private string? _classFinding;
    private string? _classSaved;
    private string _newCode = "";
    private string _newName = "";
    private string? _pupilFinding;

    /// <summary>The class shown.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        await ReloadAsync();
        (_name, _keepUntil) = (_class?.Name ?? "", _class?.KeepUntil);
        var lessons = (await Desk.Store.ListLessonsAsync(Desk.SchoolId)).Where(l => l.ClassId == Id).Reverse();
        _lessons = await LessonProgress.ListAsync(Desk, lessons);
    }

    private async Task ReloadAsync()
    {
        _class = (await Desk.Store.ListClassesAsync(Desk.SchoolId)).FirstOrDefault(c => c.Id == Id);
        _pupils = await Desk.Store.ListClassPupilsAsync(Desk.SchoolId, Id);
        _restrictions = (await Desk.Store.ListRestrictionsAsync(Desk.SchoolId)).ToLookup(r => r.PupilId);
    }

    private IReadOnlyList<Restriction> RestrictionsOf(Pupil pupil) =>
        [.. _restrictions[pupil.Id].OrderBy(r => r.Without)];

    private async Task SaveClassAsync()
    {
        _classSaved = null;
        var changed = _class! with { Name = _name.Trim(), KeepUntil = _keepUntil };
        _classFinding = RosterNames.FindingOf(changed, await Desk.Store.ListClassesAsync(Desk.SchoolId))
            ?? await SaveAsync(new RosterSave { Classes = [changed] });
        if (_classFinding is null) _classSaved = Say("Saved");
    }

    private async Task AddPupilAsync()
    {
        var pupil = new Pupil
        {
            SchoolId = Desk.SchoolId,
            Id = Desk.NewId(),
            Code = _newCode.Trim(),
            DisplayName = string.IsNullOrWhiteSpace(_newName) ? null : _newName.Trim(),
        };
        var enrolment = new Enrolment { SchoolId = Desk.SchoolId, ClassId = Id, PupilId = pupil.Id };
        _pupilFinding = RosterNames.FindingOf(pupil, await Desk.Store.ListPupilsAsync(Desk.SchoolId))
            ?? await SaveAsync(new RosterSave { Pupils = [pupil], Enrolments = [enrolment] });
        if (_pupilFinding is null) (_newCode, _newName) = ("", "");
    }

    private async Task<string?> SaveAsync(RosterSave save)
    {
        var failure = await Desk.TryAsync(() => Desk.Store.SaveRosterAsync(Desk.SchoolId, save));
        if (failure is null) await ReloadAsync();
        return failure;
    }
}
