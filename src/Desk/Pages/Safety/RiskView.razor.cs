using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>A lesson's risk page: what is proposed, and the teacher's words beside it.</summary>
public partial class RiskView
{
    private LessonRecord? _record;
    private RiskMaterial _material = new();
    private RiskDraft? _draft;
    private IReadOnlyList<Finding> _findings = [];
    private bool _isDirty;
    private bool _isSaved;
    private string? _failure;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Id);
        if (_record is null) return;
        _material = await RiskMaterial.LoadAsync(Desk.Store, _record);
        _draft = new RiskDraft(_material.Notes, [.. (_material.Content?.Tasks ?? []).Select(t => t.TaskId)]);
        (_findings, _isDirty, _isSaved, _failure) = ([], false, false, null);
    }

    private void Touch() => (_isDirty, _isSaved) = (true, false);

    // The page as it stands in the form, saved or not.
    private RiskPage Written() => RiskPage.Of(_record!, _material with { Notes = Notes() }, CultureInfo.CurrentUICulture);

    private RiskNotes Notes()
    {
        var proposed = RiskPage.Of(_record!, _material, CultureInfo.CurrentUICulture).Tasks.ToDictionary(t => t.TaskId, t => t.ProposedControls);
        return _draft!.ToNotes(id => proposed.GetValueOrDefault(id) ?? []);
    }

    private async Task SaveAsync()
    {
        var notes = Notes();
        _findings = RiskCheck.Of(notes, id => _material.Content?.Tasks.FirstOrDefault(t => t.TaskId == id)?.Name ?? "");
        _failure = _findings.Any(f => f.IsRefused)
            ? Say("FixFirst")
            : await Desk.TryAsync(() => Desk.Store.SaveLessonRiskAsync(new LessonRisk { SchoolId = Desk.SchoolId, LessonId = Id, Notes = notes }));
        if (_failure is not null) return;
        _material = _material with { Notes = notes };
        (_isDirty, _isSaved) = (false, true);
    }
}
