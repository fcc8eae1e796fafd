using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using static Slantwise.Desk.Words.DeskWords;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>Whom the sheet being made includes in a class: words first, then pupils and levels on one line. Follows the sheet without holding up typing.</summary>
public partial class ReachPanel
{
    // Long enough that a run of ticks is one question, short enough to feel like an answer.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private ReachSession? _session;
    private IReadOnlyList<ReachView> _views = [];
    private CancellationTokenSource _current = new();
    private string _asked = "";
    private bool _isWorking;

    /// <summary>The sheet as it would be printed now.</summary>
    [Parameter, EditorRequired]
    public SheetContent Content { get; set; } = new() { Title = "" };

    /// <summary>The sheet's id: the class that used it last is looked at first.</summary>
    [Parameter]
    public Guid SheetId { get; set; }

    /// <summary>The tasks as they are kept.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<MovementTask> Kept { get; set; } = [];

    /// <summary>Called when the teacher wants a level that was looked at.</summary>
    [Parameter]
    public EventCallback<ReachAdding> OnAdd { get; set; }

    /// <summary>Called when there is a new answer: what was found, in which class and for which band; the class is none while none is looked at.</summary>
    [Parameter]
    public EventCallback<ReachAnswer> OnLook { get; set; }

    [Inject]
    private DeskSchool Desk { get; set; } = null!;

    /// <inheritdoc />
    public void Dispose()
    {
        _current.Cancel();
        _current.Dispose();
    }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        if (!RendererInfo.IsInteractive) return;
        var session = new ReachSession(Desk.Store, Desk.SchoolId, () => Desk.Today);
        await session.OpenAsync(SheetId);
        _session = session;
    }

    /// <inheritdoc />
    protected override Task OnParametersSetAsync() => LookAsync();

    private static string Tenths((int Low, int High)? tenths) => tenths switch
    {
        null => Say("ReachNotAllowed"),
        { } t when t.Low == t.High => Say("ReachTenthsSame", t.Low),
        { } t => Say("ReachTenths", t.Low, t.High),
    };

    private bool IsKept(ReachView view, Level added) => Kept.Any(k => k.Id == view.Task.TaskId && k.Levels.Any(l => l.Id == added.Id));

    private Task PickAsync(ChangeEventArgs change)
    {
        _session!.ClassId = Guid.TryParse(change.Value as string, out var id) ? id : null;
        _views = [];
        return LookAsync();
    }

    private Task LowAsync(ChangeEventArgs change)
    {
        _session!.LowOf100 = Whole(change);
        return LookAsync();
    }

    private Task HighAsync(ChangeEventArgs change)
    {
        _session!.HighOf100 = Whole(change);
        return LookAsync();
    }

    // A field that is empty for a moment is no band, and no answer.
    private static int Whole(ChangeEventArgs change) => int.TryParse(change.Value as string, NumberStyles.Integer, CultureInfo.InvariantCulture, out var n) ? n : 0;

    private async Task LookAsync()
    {
        if (_session is null) return;
        // Titles, sets and trials change nothing here.
        var asked = Asked(_session);
        if (asked == _asked) return;
        _asked = asked;
        var (before, cancel) = (_current, (_current = new CancellationTokenSource()).Token);
        await before.CancelAsync();
        before.Dispose();
        _isWorking = true;
        try
        {
            await Task.Delay(Pause, cancel);
            _views = await _session.LookAsync(Content, Kept, Desk.School.Policy, cancel);
            _isWorking = false;
            if (OnLook.HasDelegate) await OnLook.InvokeAsync(new ReachAnswer(_views, _session.ClassName, new(_session.LowOf100 / 100.0, _session.HighOf100 / 100.0)));
        }
        catch (OperationCanceledException)
        {
            // The sheet has changed again; the next look answers.
        }
    }

    private string Asked(ReachSession session) => string.Join('|', new[] { $"{session.ClassId} {session.LowOf100} {session.HighOf100}" }
        .Concat(Content.Tasks.SelectMany(t => t.Levels.Select(l => $"{l.Id} {l.Name} {l.Dose}").Prepend($"{t.TaskId} {t.Name}"))));
}
