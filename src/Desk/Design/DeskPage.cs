using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Slantwise.Desk.Design;

/// <summary>A page that starts from the school: loads it, then what the page itself needs.</summary>
public abstract class DeskPage : ComponentBase
{
    private Uri? _loaded;

    /// <summary>The store, the school and the clock.</summary>
    [Inject]
    protected DeskSchool Desk { get; set; } = null!;

    /// <summary>The page's address, and the way to another.</summary>
    [Inject]
    protected NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    /// <summary>Whether everything the page needs is there; before, it shows only its heading.</summary>
    protected bool IsLoaded { get; private set; }

    /// <summary>Loads what the page shows. The school is there already.</summary>
    protected abstract Task LoadAsync();

    /// <summary>Gives a live page another address without loading it, as when something new was saved for the first time.</summary>
    /// <param name="address">The address to show, to reload and to come back to.</param>
    protected async Task ShowAddressAsync(string address)
    {
        await using var desk = await Browser.InvokeAsync<IJSObjectReference>("import", "./_content/Slantwise.Desk/desk.js");
        await desk.InvokeVoidAsync("showAddress", address);
    }

    /// <summary>Loads when the address is new, so that what was typed outlives a mere redrawing.</summary>
    protected sealed override async Task OnParametersSetAsync()
    {
        var here = new Uri(Navigation.Uri);
        if (here == _loaded) return;
        _loaded = here;
        await Desk.LoadAsync();
        if (!Desk.HasSchool) return;
        await LoadAsync();
        IsLoaded = true;
    }
}
