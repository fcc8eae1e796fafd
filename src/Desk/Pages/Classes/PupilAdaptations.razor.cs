using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using P = Slantwise.Desk.Words.PolicyWords;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>How one pupil does tasks: a short text each, kept from lesson to lesson.</summary>
public partial class PupilAdaptations
{
    private IReadOnlyList<MovementTask> _tasks = [];
    private Dictionary<Guid, TaskDesign> _designs = [];
    private IReadOnlyList<PupilAdaptation> _kept = [];
    private bool _isLoaded;
    private Guid? _taskId;
    private string _text = "";
    private string? _taskFinding;
    private string? _finding;
    private string? _saved;
    private string? _failure;

    /// <summary>The pupil.</summary>
    [Parameter, EditorRequired]
    public Pupil Pupil { get; set; } = null!;

    // A school's own design before the library's: it may have changed the task.
    private IReadOnlyList<Adaptation> Ideas
    {
        get
        {
            if (_taskId is not { } id) return [];
            if (!_designs.TryGetValue(id, out var own)) return LibraryShelf.Find(id, CultureInfo.CurrentUICulture)?.Words.Adaptations ?? [];
            return (own.Words.GetValueOrDefault(CultureInfo.CurrentUICulture.TwoLetterISOLanguageName) ?? own.Words.Values.FirstOrDefault())?.Adaptations ?? [];
        }
    }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        _tasks = await Desk.Store.ListTasksAsync(Desk.SchoolId);
        _designs = (await Desk.Store.ListTaskDesignsAsync(Desk.SchoolId)).ToDictionary(d => d.TaskId, d => d.Design);
        await LoadAsync();
        _isLoaded = true;
    }

    private async Task LoadAsync() => _kept =
    [
        .. (await Desk.Store.ListAdaptationsAsync(Desk.SchoolId)).Where(a => a.PupilId == Pupil.Id).OrderBy(a => NameOf(a.TaskId), StringComparer.CurrentCultureIgnoreCase),
    ];

    private string NameOf(Guid taskId) => _tasks.FirstOrDefault(t => t.Id == taskId)?.Name ?? LibraryShelf.Find(taskId, CultureInfo.CurrentUICulture)?.Words.Name ?? "–";

    private void Choose(ChangeEventArgs change)
    {
        _taskId = Guid.TryParse(change.Value as string, out var id) ? id : null;
        // What is typed stays unless there is something to change.
        if (_kept.FirstOrDefault(a => a.TaskId == _taskId) is { } kept) _text = kept.Text;
        (_taskFinding, _saved) = (null, null);
    }

    private void Edit(PupilAdaptation kept) => (_taskId, _text, _taskFinding, _finding, _saved) = (kept.TaskId, kept.Text, null, null, null);

    private void Take(string idea) => (_text, _finding, _saved) = (idea, null, null);

    private async Task SaveAsync()
    {
        var text = _text.Trim();
        _saved = null;
        _taskFinding = _taskId is null ? P.Say("AdaptationChooseTask") : null;
        _finding = AdaptationCheck.Of(text) is [var found, ..] ? found.Sentence(CultureInfo.CurrentUICulture) : null;
        if (_taskId is not { } taskId || _finding is not null) return;
        var adaptation = new PupilAdaptation { SchoolId = Desk.SchoolId, PupilId = Pupil.Id, TaskId = taskId, Text = text };
        _failure = await DoAsync(() => Desk.Store.SaveAdaptationAsync(adaptation));
        if (_failure is null) (_taskId, _text, _saved) = (null, "", Words.DeskWords.Say("Saved"));
    }

    private async Task RemoveAsync(PupilAdaptation kept) =>
        _failure = await DoAsync(() => Desk.Store.RemoveAdaptationAsync(Desk.SchoolId, kept.PupilId, kept.TaskId));

    private Task<string?> DoAsync(Func<Task> work) => Desk.TryAsync(async () =>
    {
        await work();
        await LoadAsync();
    });
}
