using Microsoft.AspNetCore.Components;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Floor;

/// <summary>A lesson on tablets: opening it, how to join, the devices, ending it.</summary>
public partial class FloorPage
{
    // Words such as "2 minutes ago" grow old without anything happening.
    private static readonly TimeSpan Glance = TimeSpan.FromSeconds(15);
    private static readonly TimeSpan BeforeAnotherTry = TimeSpan.FromSeconds(5);

    private readonly CancellationTokenSource _gone = new();
    private LessonRecord? _record;
    private Sheet? _sheet;
    private FloorSeen? _seen;
    private DateTimeOffset _now;
    private bool _isWatching;
    private string? _failure;

    /// <summary>The lesson.</summary>
    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    private FloorHub Hub { get; set; } = null!;

    [Inject]
    private FloorTickets Tickets { get; set; } = null!;

    [Inject]
    private FloorAddresses Addresses { get; set; } = null!;

    private string State => _seen is null ? "new" : _seen.Lesson.ClosedAt is null ? "open" : "closed";

    /// <inheritdoc />
    protected override Task LoadAsync() => ReloadAsync();

    private async Task ReloadAsync()
    {
        _now = Desk.Clock.GetUtcNow();
        _record = await LessonRecord.LoadAsync(Desk.Store, Desk.SchoolId, Id);
        if (_record?.Lesson.SheetId is { } sheetId) _sheet = await Desk.Store.FindSheetAsync(Desk.SchoolId, sheetId);
        _seen = _record is null ? null : await Hub.FindAsync(Desk.SchoolId, Id, _gone.Token);
    }

    /// <inheritdoc />
    protected override void OnAfterRender(bool firstRender)
    {
        if (!firstRender || !RendererInfo.IsInteractive) return;
        _ = LookAgainAsync();
    }

    // Once the lesson is open, the page follows it; the circle of words runs from the start.
    private async Task LookAgainAsync()
    {
        using var timer = new PeriodicTimer(Glance, Desk.Clock);
        try
        {
            do
            {
                _now = Desk.Clock.GetUtcNow();
                if (_seen is not null && !_isWatching) _ = FollowAsync();
                StateHasChanged();
            }
            while (await timer.WaitForNextTickAsync(_gone.Token));
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }

    private async Task FollowAsync()
    {
        _isWatching = true;
        while (!_gone.IsCancellationRequested)
        {
            _failure = await Desk.TryAsync(WatchAsync);
            if (_gone.IsCancellationRequested) return;
            StateHasChanged();
            await Task.Delay(BeforeAnotherTry, Desk.Clock).ConfigureAwait(true);
        }
    }

    private async Task WatchAsync()
    {
        try
        {
            await foreach (var seen in Hub.WatchAsync(Desk.SchoolId, Id, _gone.Token))
            {
                _seen = seen;
                _now = Desk.Clock.GetUtcNow();
                StateHasChanged();
            }
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }

    private Task OpenAsync() => DoAsync(async () =>
    {
        await Hub.OpenAsync(Desk.SchoolId, Id);
        await ReloadAsync();
        if (!_isWatching) _ = FollowAsync();
    });

    private Task RenewAsync() => DoAsync(() => Hub.RenewCodeAsync(Desk.SchoolId, Id));

    private Task EndAsync() => DoAsync(() => Hub.CloseAsync(Desk.SchoolId, Id));

    private Task OrderAsync((string DeviceId, DeviceOrder Order) asked) => DoAsync(() => Hub.OrderDeviceAsync(Desk.SchoolId, Id, asked.DeviceId, asked.Order));

    private async Task DoAsync(Func<Task> work)
    {
        string? refused = null;
        var failed = await Desk.TryAsync(async () =>
        {
            try
            {
                await work();
                _seen = await Hub.FindAsync(Desk.SchoolId, Id);
            }
            catch (FloorRefusal refusal)
            {
                refused = FloorText.Refused(refusal.Kind);
            }
        });
        _failure = failed ?? refused;
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
    }
}
