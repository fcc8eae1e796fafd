using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slantwise.Desk.Design;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>Marks a picture that stays in the browser, and says what the balance studio says of it.</summary>
public sealed partial class PhotoPage : DeskPage, IAsyncDisposable
{
    private readonly PhotoSession _session = new();
    private ElementReference _root;
    private IJSObjectReference? _module;
    private IJSObjectReference? _marking;
    private DotNetObjectReference<PhotoPage>? _self;
    private MarkedBalance? _balance;
    private PhotoStep? _last;
    private string? _sample;
    private bool _hasFailed;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private PhotoView View => _session.Active;

    private PhotoText Text => new(_session);

    // In a second round the first one's answer must not lead the hand, and below the floor there is none to draw.
    private MarkedBalance? Drawn =>
        (View.RoundCount > 1 && View.Current is not null) || _balance?.Cautions.Contains(MarkedCaution.BelowFloor) == true ? null : _balance;

    /// <summary>A picture is shown in the browser; this is all the program learns of it.</summary>
    [JSInvokable]
    public void PictureShown(int number, double widthPx, double heightPx)
    {
        if (number < 0 || number >= _session.Views.Count || !(widthPx > 0 && heightPx > 0)) return;
        _session.Views[number].Show(widthPx, heightPx);
        if (_sample is not null) PhotoSample.Describe(_sample, _session.Views[number]);
        (_sample, _hasFailed, _last) = (null, false, null);
        Redraw();
    }

    /// <summary>The browser cannot show the file.</summary>
    [JSInvokable]
    public void PictureFailed()
    {
        (_sample, _hasFailed) = (null, true);
        StateHasChanged();
    }

    /// <summary>Marks what is asked at a place of what is shown, in fractions from the left and from the top.</summary>
    /// <returns>The mark's name in the page; none where nothing is asked.</returns>
    [JSInvokable]
    public string? Place(double leftFraction, double topFraction)
    {
        if (!(double.IsFinite(leftFraction) && double.IsFinite(topFraction))) return null;
        _last = View.Place(At(leftFraction, topFraction));
        Redraw();
        return _last?.Key;
    }

    /// <summary>Moves a mark.</summary>
    [JSInvokable]
    public void Move(string key, double leftFraction, double topFraction, bool isNew)
    {
        if (!(double.IsFinite(leftFraction) && double.IsFinite(topFraction)) || View.Steps.Where(s => s.Key == key).ToList() is not [var step]) return;
        View.Move(step, At(leftFraction, topFraction), isNew);
        _last = step;
        Redraw();
    }

    /// <summary>Takes the last thing back.</summary>
    [JSInvokable]
    public void Undo() => Do(View.Undo);

    /// <summary>Forgets the pictures.</summary>
    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        try
        {
            if (_marking is not null)
            {
                await _marking.InvokeVoidAsync("dispose");
                await _marking.DisposeAsync();
            }
            if (_module is not null) await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its script and pictures with it.
        }
    }

    /// <summary>Nothing is loaded: the page starts empty every time.</summary>
    protected override Task LoadAsync() => Task.CompletedTask;

    /// <summary>Hands the page to its script once it is there.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        _module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["_content/Slantwise.Desk/photo.js"]);
        _self = DotNetObjectReference.Create(this);
        _marking = await _module.InvokeAsync<IJSObjectReference>("attach", _root, _self);
    }

    private PointPx At(double leftFraction, double topFraction)
    {
        var turn = View.Turn;
        return turn.Of(new(leftFraction * turn.ShownWidthPx, topFraction * turn.ShownHeightPx));
    }

    private async Task ShowSampleAsync(string key)
    {
        if (_marking is null) return;
        _sample = key;
        await _marking.InvokeVoidAsync("showDrawing", SvgWriter.Write(PhotoSample.Of(key, View.IsFront).Scene));
    }

    private async Task RemoveSecondAsync()
    {
        if (_marking is not null) await _marking.InvokeVoidAsync("forget", 1);
        Do(_session.RemoveSecond);
    }

    private void AddSecond() => Do(_session.AddSecond);

    private void Open(int number) => Do(() => _session.Open(number));

    private void Do(Action change)
    {
        change();
        _last = null;
        Redraw();
    }

    private void Redraw()
    {
        _balance = View.HasPicture ? _session.BalanceOf(View) : null;
        StateHasChanged();
    }
}
