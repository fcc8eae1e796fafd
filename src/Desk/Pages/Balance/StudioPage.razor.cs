using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using S = Slantwise.Desk.Words.StudioWords;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>The balance studio: the engine answers every move of the hand. Nothing is stored.</summary>
public partial class StudioPage
{
    private const string FirstPosture = "two-feet";

    private readonly StudioView _view = new();
    private readonly StudioPlan _plan = new();
    private StudioUnits _units = new(null, null);
    private StudioSession? _session;
    private string _key = FirstPosture;
    private string _said = "";
    private string _surface = "";
    private IJSObjectReference? _module;
    private DotNetObjectReference<StudioPage>? _self;

    /// <summary>The posture to begin with; two feet where none is given.</summary>
    [SupplyParameterFromQuery(Name = "posture")]
    public string? PostureKey { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private StudioSession Session => _session ??= new(Start());

    private string Verdict => BalanceWords.Verdict(Session.Settled, Session.Balance, CultureInfo.CurrentUICulture, _units.StatureCm);

    private string Shape => BalanceWords.Shape(Session.Settled, Session.Balance, CultureInfo.CurrentUICulture);

    private string Help => BalanceWords.Help(Session.Balance, CultureInfo.CurrentUICulture);

    private string Stop => !Session.IsStopped ? "" : StudioStops.Of(Session.Stops, CultureInfo.CurrentUICulture);

    private string Description => $"{PostureNames.Of(Session.Posture.Key, CultureInfo.CurrentUICulture)}. {PostureDescription.Of(Session.Settled, CultureInfo.CurrentUICulture)}";

    private bool IsNotAllowed => (Session.Posture.HasHeadWeight && !Offer.IsAllowed(BodyDemand.HeadWeight, Desk.School.Policy))
        || (Session.Settled.IsInverted && !Offer.IsAllowed(BodyDemand.Inversion, Desk.School.Policy));

    private BodyDirection PlanTop => BalanceSide.Direction(Session.Settled.Body.Skeleton.Frame(SegmentKind.MiddleTrunk, Side.Middle), new(1, 0));

    /// <inheritdoc />
    protected override Task LoadAsync()
    {
        _session = new(Start());
        return Task.CompletedTask;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!IsLoaded || _module is not null || !RendererInfo.IsInteractive) return;
        _module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["_content/Slantwise.Desk/balance.js"]);
        _self ??= DotNetObjectReference.Create(this);
        await _module.InvokeVoidAsync("attach", "studio", _self);
        StateHasChanged();
    }

    /// <summary>Begins to drag a handle.</summary>
    /// <param name="handle">Its name.</param>
    /// <param name="surface">Where: <c>figure</c> or <c>plan</c>.</param>
    [JSInvokable]
    public void Begin(string handle, string surface)
    {
        _surface = surface;
        Session.Begin(handle);
    }

    /// <summary>Drags it.</summary>
    /// <param name="handle">Its name: what was begun is dragged, and nothing else.</param>
    /// <param name="rightMm">From where the drag began, to the right, in the drawing's millimetres.</param>
    /// <param name="downMm">Down.</param>
    [JSInvokable]
    public void Drag(string handle, double rightMm, double downMm)
    {
        if (!double.IsFinite(rightMm) || !double.IsFinite(downMm) || Session.Dragged is not { } dragged || dragged.Id != handle) return;
        if (_surface == "plan")
        {
            Session.Drag(_plan.Move(rightMm, downMm), new(0, 0, 1));
        }
        else
        {
            var frame = _view.Frame;
            Session.Drag(dragged.Contact is null ? frame.Move(rightMm, downMm) : StudioView.Slide(frame, rightMm, downMm), StudioView.Sight(frame));
        }
        StateHasChanged();
    }

    /// <summary>Ends the drag.</summary>
    [JSInvokable]
    public void End()
    {
        Session.End();
        Settle();
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

    private Posture Start() => PostureLibrary.Find(_key = PostureLibrary.Find(PostureKey ?? FirstPosture) is null ? FirstPosture : PostureKey ?? FirstPosture)!;

    private async Task PickAsync(ChangeEventArgs e)
    {
        if (PostureLibrary.Find(e.Value?.ToString() ?? "") is not { } posture) return;
        _key = posture.Key;
        Session.Take(posture);
        Settle();
        await ShowAddressAsync($"/balance?posture={posture.Key}");
    }

    private void OpenAsync(Posture posture)
    {
        _key = "";
        Session.Take(posture);
        Settle();
    }

    private void Change(Action change)
    {
        change();
        Settle();
    }

    // Said once a move is over, not while it goes on.
    private void Settle() => _said = string.Join(' ', new[] { Verdict, Shape, Stop }.Where(s => s.Length > 0));
}
