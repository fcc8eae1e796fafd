using Microsoft.AspNetCore.Components;
using Slantwise.Records.Checks;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Own;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>Makes a task sheet: tasks, levels, sets, trials, what is predicted.</summary>
public partial class SheetEditor
{
    private SheetDraft? _draft;
    private IReadOnlyList<MovementTask> _tasks = [];
    private SheetVersion? _latest;
    private Guid? _addedId;
    private bool _isKept;
    private bool _isDirty;
    private bool _isSaved;
    private string? _failure;

    /// <summary>The sheet to edit; none for a new one.</summary>
    [Parameter]
    public Guid? Id { get; set; }

    private string Title => string.IsNullOrWhiteSpace(_draft?.Title) ? Say("NewSheet") : _draft.Title;

    private IReadOnlyList<Finding> Findings => SheetCheck.Of(_draft!.ToContent(), Desk.School.Policy);

    private IReadOnlyList<MovementTask> Addable => [.. _tasks.Where(t => _draft!.Tasks.All(p => p.TaskId != t.Id))];

    private string VersionSentence =>
        _latest is null ? Say("NoVersionYet")
        : SheetDraft.AreAlike(_latest.Content, _draft!.ToContent()) ? Say("VersionIsThis", _latest.Version)
        : Say("VersionDiffers", _latest.Version);

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _tasks = await Desk.Store.ListTasksAsync(Desk.SchoolId);
        var sheet = Id is { } id
            ? await Desk.Store.FindSheetAsync(Desk.SchoolId, id)
            : new Sheet { SchoolId = Desk.SchoolId, Id = Desk.NewId(), Name = "", Draft = new SheetContent { Title = "" } };
        _draft = sheet is null ? null : new SheetDraft(sheet, _tasks);
        _latest = sheet is { LatestVersion: > 0 }
            ? await Desk.Store.FindSheetVersionAsync(Desk.SchoolId, sheet.Id, sheet.LatestVersion)
            : null;
        (_isKept, _isDirty, _isSaved, _failure) = (Id is not null, false, false, null);
    }

    private void Touch() => (_isDirty, _isSaved) = (true, false);

    private void Add()
    {
        if (_tasks.FirstOrDefault(t => t.Id == _addedId) is not { } task) return;
        var allowed = Offer.LevelsFor(task.Levels, Desk.School.Policy, [], Desk.Today);
        _draft!.Tasks.Add(TaskPick.Of(task, [.. allowed.Take(Limits.SheetLevelCount)]));
        _addedId = null;
        Touch();
    }

    private void Move(int index, int by)
    {
        var tasks = _draft!.Tasks;
        (tasks[index], tasks[index + by]) = (tasks[index + by], tasks[index]);
        Touch();
    }

    private void Remove(int index)
    {
        _draft!.Tasks.RemoveAt(index);
        Touch();
    }

    private async Task PutAsync(ReachAdding adding)
    {
        if (_draft!.Tasks.FirstOrDefault(t => t.TaskId == adding.TaskId) is not { } pick) return;
        if (pick.Levels.FirstOrDefault(l => l.Level.Id == adding.Level.Id) is { } own)
        {
            own.IsPicked = true;
            Touch();
            return;
        }
        // A level's id is its own for good, whatever becomes of its wording; the one it was looked at with is made from the wording.
        var level = adding.Level with { Id = Desk.NewId() };
        // As it is kept now: somebody may have changed it on another page.
        var task = await Desk.Store.FindTaskAsync(Desk.SchoolId, adding.TaskId);
        if (task is not null)
        {
            var at = ReachAdding.PlaceOf(task.Levels, level);
            task = task with { Levels = [.. task.Levels.Take(at), level, .. task.Levels.Skip(at)] };
            _failure = await Desk.TryAsync(() => OwnTask.SaveAsync(Desk.Store, task));
            if (_failure is not null) return;
            _tasks = [.. _tasks.Select(t => t.Id == task.Id ? task : t)];
        }
        pick.Put(level, task);
        Touch();
    }

    private async Task SaveAsync()
    {
        var sheet = _draft!.ToSheet();
        _failure = sheet.Name.Length == 0
            ? Say("SheetNeedsName")
            : await Desk.TryAsync(() => Desk.Store.SaveSheetAsync(sheet));
        if (_failure is not null) return;
        (_isDirty, _isSaved) = (false, true);
        if (!_isKept) await ShowAddressAsync($"/sheets/{_draft.Id}");
        _isKept = true;
    }
}
