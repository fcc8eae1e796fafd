using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using static Slantwise.Desk.Words.GroupWords;

namespace Slantwise.Desk.Pages.Groups;

/// <summary>A lesson's groups: made by what is wished, changed by hand, saved as one goes.</summary>
public partial class GroupsPage
{
    private LessonRecord? _record;
    private GroupSession? _session;
    private GroupSaving _saving = new(() => Task.FromResult<string?>(null));
    private Lesson? _from;
    private bool _isKept;
    private IJSObjectReference? _module;
    private DotNetObjectReference<GroupsPage>? _self;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private string SaveState => _saving.IsBusy ? Say("Saving") : _saving.Failure is not null ? Say("NotSaved") : _saving.IsSaved || _isKept ? Say("Saved") : "";

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        (_session, _saving, _from) = (null, new(() => Desk.TryAsync(KeepAsync)), null);
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Id);
        if (_record is null) return;
        var start = await GroupStart.FindAsync(Desk.Store, _record);
        _session = new(_record, start.Plan);
        (_isKept, _from) = (start.IsKept, start.From);
        _session.Read();
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!IsLoaded || _session is not { Roster.CanBeGrouped: true } || _module is not null || !RendererInfo.IsInteractive) return;
        _module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["_content/Slantwise.Desk/groups.js"]);
        _self ??= DotNetObjectReference.Create(this);
        await _module.InvokeVoidAsync("attach", "groups", _self);
    }

    /// <summary>Moves a pupil, as dragged or by a number key.</summary>
    /// <param name="pupil">The pupil's id.</param>
    /// <param name="group">The group's number, from 1.</param>
    [JSInvokable]
    public async Task Move(string pupil, int group)
    {
        if (_session is null || !Guid.TryParse(pupil, out var id) || !_session.Move(id, group - 1)) return;
        await ChangedAsync();
    }

    /// <summary>Takes the last step back, by its keys.</summary>
    [JSInvokable]
    public async Task Undo()
    {
        if (_session is not { CanUndo: true }) return;
        _session.Undo();
        await ChangedAsync();
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        _self?.Dispose();
        if (_module is null) return;
        try
        {
            await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone already.
        }
    }

    private async Task ChangedAsync()
    {
        var saving = _saving.SaveAsync();
        StateHasChanged();
        await saving;
        StateHasChanged();
    }

    private Task KeepAsync() => Desk.Store.SaveLessonGroupsAsync(new LessonGroups { SchoolId = Desk.SchoolId, LessonId = Id, Plan = _session!.Plan });
}
