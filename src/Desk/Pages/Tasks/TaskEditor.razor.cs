using Microsoft.AspNetCore.Components;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Own;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>Writes a task: what it is, its cues, its levels.</summary>
public partial class TaskEditor
{
    private TaskDraft? _draft;
    private TaskDesign? _design;
    private string _file = "";
    private (int Index, LevelDraft Level)? _removed;
    private Guid? _freshId;
    private bool _isKept;
    private bool _isDirty;
    private bool _isSaved;
    private string? _failure;

    /// <summary>The task to edit; none for a new one.</summary>
    [Parameter]
    public Guid? Id { get; set; }

    private string Title => string.IsNullOrWhiteSpace(_draft?.Name) ? Say("NewTask") : _draft.Name;

    private IReadOnlyList<Finding> Findings => _draft!.ToTask() is var task && _design is { } design
        ? [.. TaskCheck.Of(task), .. DesignInStep.Of(design, task).Notes]
        : TaskCheck.Of(_draft.ToTask());

    // As kept: a file is made when the task is, not with every letter.
    private string FileAddress() => "data:application/json;charset=utf-8," + Uri.EscapeDataString(
        new OwnTask(_draft!.ToTask(), _design is { } design ? DesignInStep.Of(design, _draft.ToTask()).Design : null).ToFile());

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        var own = Id is { } id ? await OwnTask.FindAsync(Desk.Store, Desk.SchoolId, id) : null;
        _draft = Id is null ? new TaskDraft(Desk.SchoolId, Desk.NewId()) : own is null ? null : TaskDraft.Of(own.Task);
        _design = own?.Design;
        _file = own is null ? "" : FileAddress();
        (_isKept, _isDirty, _isSaved, _failure, _removed) = (Id is not null, false, false, null, null);
    }

    private void Touch() => (_isDirty, _isSaved) = (true, false);

    private void Add()
    {
        var last = _draft!.Levels.LastOrDefault();
        var level = new LevelDraft(Desk.NewId()) { DoseKind = last?.DoseKind ?? DoseKind.HoldS };
        _draft.Levels.Add(level);
        _freshId = level.Id;
        Touch();
    }

    private void Move(int index, int by)
    {
        var levels = _draft!.Levels;
        (levels[index], levels[index + by]) = (levels[index + by], levels[index]);
        Touch();
    }

    private void Double(int index)
    {
        var copy = LevelDraft.Of(_draft!.Levels[index].ToLevel(), Desk.NewId());
        _draft.Levels.Insert(index + 1, copy);
        _freshId = copy.Id;
        Touch();
    }

    private void Remove(int index)
    {
        _removed = (index, _draft!.Levels[index]);
        _draft.Levels.RemoveAt(index);
        Touch();
    }

    private void PutBack()
    {
        if (_removed is not { } removed) return;
        _draft!.Levels.Insert(Math.Min(removed.Index, _draft.Levels.Count), removed.Level);
        _removed = null;
        Touch();
    }

    private async Task SaveAsync()
    {
        _failure = Findings.Any(f => f.Severity == FindingSeverity.Refused)
            ? Say("FixFirst")
            : await Desk.TryAsync(() => OwnTask.SaveAsync(Desk.Store, _draft!.ToTask()));
        if (_failure is not null) return;
        (_isDirty, _isSaved, _file) = (false, true, FileAddress());
        if (!_isKept) await ShowAddressAsync($"/tasks/{_draft!.Id}");
        _isKept = true;
    }
}
