using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slantwise.Records.Halls;
using Slantwise.Records.Halls.Drawing;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using S = Slantwise.Desk.Words.SpaceWords;

namespace Slantwise.Desk.Pages.Halls;

/// <summary>A lesson in its hall: laid out, moved by hand, kept as one goes.</summary>
public partial class LessonSpacePage
{
    private const string TeacherKey = "teacher";

    private LessonRecord? _record;
    private IReadOnlyList<SchoolHall> _halls = [];
    private SheetContent? _sheet;
    private int? _groupCount;
    private SpaceSession? _session;
    private SpaceSizes? _sizes;
    private HallReading? _reading;
    private HallDrawing? _drawing;
    private IReadOnlyList<string> _lately = [];
    private int _tableKey;
    private int? _picked;
    private bool _isSaved = true;
    private bool _wasSaved;
    private bool _isSaving;
    private string? _failure;
    private string _said = "";
    private IJSObjectReference? _module;
    private DotNetObjectReference<LessonSpacePage>? _self;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private int? Picked => _picked < _session?.Layout.Mats.Count ? _picked : null;

    private IEnumerable<string> Room => _record!.Lesson.MatCount is > 0 and var planned && _session!.Layout.Mats.Count is > 0 and var laid && laid != planned
        ? [S.Say("PlannedOther", planned, laid), .. _reading!.RoomNotes] : _reading!.RoomNotes;

    /// <inheritdoc />
    protected override async Task LoadAsync()
    {
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Id);
        if (_record is null) return;
        _halls = await Desk.Store.ListHallsAsync(Desk.SchoolId);
        _sheet = _record.Sheet?.Content ?? (_record.Lesson.SheetId is { } sheet ? (await Desk.Store.FindSheetAsync(Desk.SchoolId, sheet))?.Draft : null);
        _groupCount = await LessonHall.GroupCountAsync(Desk.Store, _record.Lesson);
        if (_halls.Count == 0) return;
        var space = await Desk.Store.FindLessonSpaceAsync(Desk.SchoolId, Id);
        var before = space is null ? await LastOfClassAsync() : null;
        var hallId = space?.HallId ?? before?.HallId;
        _session = new(_halls.FirstOrDefault(h => h.Id == hallId) ?? _halls[0], space?.Layout ?? SpaceProposal.Start(before?.Layout));
        _session.TakeFalls(await FallsAsync(), isNew: false);
        var laid = _session.Layout.Mats.Count;
        _sizes = new(laid > 0 ? laid : SpaceProposal.MatCount(_record), _session.Layout);
        Read();
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!IsLoaded || _session is null || _module is not null || !RendererInfo.IsInteractive) return;
        _module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["_content/Slantwise.Desk/space.js"]);
        _self ??= DotNetObjectReference.Create(this);
        await _module.InvokeVoidAsync("attach", "hall", _self);
        StateHasChanged();
    }

    /// <summary>Ends a drag, or a run of arrows.</summary>
    /// <param name="key">What was moved: <c>m</c> and the mat from 0, or <c>teacher</c>.</param>
    /// <param name="xM">Where its middle is now, from the left wall.</param>
    /// <param name="yM">From the front wall.</param>
    [JSInvokable]
    public async Task MoveTo(string key, double xM, double yM)
    {
        if (_session is null || !double.IsFinite(xM) || !double.IsFinite(yM)) return;
        if (key == TeacherKey) await DoAsync(() => _session.Stand(xM, yM));
        else if (MatOf(key) is { } mat) await DoAsync(() => _session.Move(mat, xM, yM), mat);
        StateHasChanged();
    }

    /// <summary>Chooses what the buttons over the drawing are for.</summary>
    /// <param name="key">What has the focus: <c>m</c> and the mat from 0, or <c>teacher</c>.</param>
    [JSInvokable]
    public void Pick(string key)
    {
        _picked = MatOf(key);
        StateHasChanged();
    }

    /// <summary>Turns a mat by a quarter.</summary>
    /// <param name="key"><c>m</c> and the mat from 0.</param>
    [JSInvokable]
    public async Task TurnMat(string key)
    {
        if (_session is null || MatOf(key) is not { } mat) return;
        await DoAsync(() => _session.Turn(mat), mat);
        StateHasChanged();
    }

    /// <summary>Takes the last step back.</summary>
    [JSInvokable]
    public async Task StepBack()
    {
        await UndoAsync();
        StateHasChanged();
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

    private static int? MatOf(string key) => key.StartsWith('m') && int.TryParse(key[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var mat) ? mat : null;

    private Task<IReadOnlyList<TaskFall>> FallsAsync() => TaskFall.ListAsync(Desk.Store, Desk.SchoolId, _sheet, FallStature.OfM(_session?.Layout.AgeYears));

    private async Task<LessonSpace?> LastOfClassAsync()
    {
        var lessons = (await Desk.Store.ListLessonsAsync(Desk.SchoolId)).Where(l => l.ClassId == _record!.Class.Id && l.Id != Id && l.Date <= _record.Lesson.Date);
        foreach (var lesson in lessons.OrderByDescending(l => l.Date).Take(10))
            if (await Desk.Store.FindLessonSpaceAsync(Desk.SchoolId, lesson.Id) is { } space) return space;
        return null;
    }

    private Task EnterAsync(ChangeEventArgs e) =>
        _halls.FirstOrDefault(h => h.Id.ToString() == e.Value?.ToString()) is { } hall ? DoAsync(() => _session!.Enter(hall)) : Task.CompletedTask;

    private async Task AgeAsync(ChangeEventArgs e)
    {
        int? age = int.TryParse(e.Value?.ToString(), CultureInfo.InvariantCulture, out var years) ? years : null;
        _session!.Change(l => l with { AgeYears = age });
        _session.TakeFalls(await FallsAsync(), isNew: true);
        await SettleAsync();
    }

    private Task SizesAsync() => DoAsync(() => _session!.Change(l => _sizes!.On(l) is var after && Sizes(after) == Sizes(l) ? l : after));

    private static (double, double, double, double) Sizes(HallLayout layout) => (layout.MatLengthM, layout.MatWidthM, layout.ClearM, layout.WallClearM);

    private Task ApartAsync(ChangeEventArgs e) => DoAsync(() => _session!.Change(l => l with { AreCirclesApart = e.Value is true }));

    private async Task LayOutAsync()
    {
        if (_sizes!.MatCount is not { } count) return;
        await DoAsync(() => _session!.LayOut(count));
        var laid = _session!.Layout.Mats.Count;
        _lately = laid < count ? [S.Say("FewerFit", count, laid)] : [];
        _said = string.Join(' ', [S.SayCount("LaidOut", laid), .. _lately]);
    }

    private Task TurnPickedAsync() => Picked is { } mat ? DoAsync(() => _session!.Turn(mat), mat) : Task.CompletedTask;

    private Task RemovePickedAsync()
    {
        if (Picked is not { } mat) return Task.CompletedTask;
        _picked = null;
        _tableKey++;
        return DoAsync(() => _session!.Remove(mat));
    }

    private Task AddAsync() => DoAsync(() => _lately = _session!.Add() ? [] : [S.Say("NoPlaceFree")]);

    private async Task UndoAsync()
    {
        if (_session is not { CanUndo: true }) return;
        await DoAsync(_session.Undo);
        // What stands in the fields goes back with it.
        _sizes = new(_sizes!.MatCount ?? _session.Layout.Mats.Count, _session.Layout);
        if (FallStature.OfM(_session.Layout.AgeYears) is var statureM) _session.TakeFalls(await TaskFall.ListAsync(Desk.Store, Desk.SchoolId, _sheet, statureM), isNew: false);
        _tableKey++;
    }

    private async Task DoAsync(Action change, int? mat = null)
    {
        change();
        await SettleAsync();
        _said = mat is { } m && m < _session!.Layout.Mats.Count
            ? string.Join(' ', [S.Say("MatAt", m + 1, _session.Layout.Mats[m].XM, _session.Layout.Mats[m].YM), S.Say("TooNearCount", _reading!.Clashes.Count)])
            : S.Say("TooNearCount", _reading!.Clashes.Count);
    }

    private async Task SettleAsync()
    {
        Read();
        _isSaved = false;
        await SaveAsync();
    }

    private void Read()
    {
        _reading = HallReading.Of(_session!.Hall, _session.Layout, _record!.Pupils.Count, CultureInfo.CurrentUICulture, _session.Falls.Select(f => f.RadiusM).DefaultIfEmpty(0).Max());
        _drawing = HallDrawing.Of(_session.Hall, _session.Layout, _reading, HallBox.Screen, CultureInfo.CurrentUICulture);
    }

    // One save at a time; what changed meanwhile is saved after it.
    private async Task SaveAsync()
    {
        if (_isSaving) return;
        _isSaving = true;
        try
        {
            (SchoolHall Hall, HallLayout Layout) kept;
            do
            {
                kept = (_session!.Hall, _session.Layout);
                _failure = await Desk.TryAsync(() => Desk.Store.SaveLessonSpaceAsync(new() { SchoolId = Desk.SchoolId, LessonId = Id, HallId = kept.Hall.Id, Layout = kept.Layout }));
            }
            while (_failure is null && kept != (_session.Hall, _session.Layout));
        }
        finally
        {
            _isSaving = false;
        }
        _isSaved = _wasSaved = _failure is null;
    }
}
