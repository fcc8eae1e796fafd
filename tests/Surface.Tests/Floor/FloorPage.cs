using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A page of the floor in a browser: fingers, eyes, and the device's own disk.</summary>
internal class FloorPage(IPage page)
{
    private const string Screens = ".page, .teacher, .board";

    private static readonly float Patience = (float)HostProgram.Patience.TotalMilliseconds;

    /// <summary>The page; another after the browser was closed and opened.</summary>
    public IPage Page { get; protected set; } = page;

    /// <summary>Whom the server knows it as; empty before it has joined.</summary>
    public string DeviceId { get; protected set; } = "";

    /// <summary>Whether the page goes away under whoever is at it: from now on nothing is asked of it.</summary>
    public bool IsGoing { get; set; }

    /// <summary>The name of the screen that shows.</summary>
    public Task<string> StepAsync() => AskAsync<string>("walk.step()");

    /// <summary>Waits for one of these screens.</summary>
    /// <returns>Which it is.</returns>
    public Task<string> AtAsync(params string[] steps) => AskAsync<string>("s => walk.at(s)", steps);

    /// <summary>Taps once.</summary>
    public Task TapAsync(string selector, int nth = 0) => AskAsync<object>("([s, n]) => walk.tap(s, n)", new object[] { selector, nth });

    /// <summary>Taps until another screen shows.</summary>
    /// <returns>Which it is.</returns>
    public Task<string> OnAsync(string selector, int nth = 0) => AskAsync<string>("([s, n]) => walk.on(s, n)", new object[] { selector, nth });

    /// <summary>Taps until something is on the screen.</summary>
    public Task ForAsync(string selector, string wanted, int nth = 0) => AskAsync<object>("([s, n, w]) => walk.for(s, n, w)", new object[] { selector, nth, wanted });

    /// <summary>Waits until something is on the screen.</summary>
    public Task SeeAsync(string selector) => AskAsync<object>("s => walk.until(s)", selector);

    /// <summary>Waits until something is not on the screen.</summary>
    public Task GoneAsync(string selector) => AskAsync<object>("s => walk.gone(s)", selector);

    /// <summary>How many there are of something now.</summary>
    public Task<int> CountAsync(string selector) => AskAsync<int>("s => walk.count(s)", selector);

    /// <summary>What stands in things, each in a line.</summary>
    public Task<string[]> TextsAsync(string selector) => AskAsync<string[]>("s => walk.texts(s)", selector);

    /// <summary>Writes into a field.</summary>
    public Task FillAsync(string selector, string text) => AskAsync<object>("([s, t]) => walk.fill(s, t)", new object[] { selector, text });

    /// <summary>Waits until everything has arrived.</summary>
    public Task SentAsync() => SeeAsync(".frame[data-unsent='0']");

    /// <summary>Whether the pages start without a network from now on.</summary>
    public Task KeptAsync() => AskAsync<object>(
        "async () => { await navigator.serviceWorker.ready; if (!navigator.serviceWorker.controller) await new Promise(done => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true })); }");

    /// <summary>How many lessons, bundles and entries of its own and of others are on its disk.</summary>
    public Task<int[]> OnDiskAsync() => AskAsync<int[]>("walk.counts()");

    /// <summary>The device's number so far, on its disk.</summary>
    public Task<int> SequenceAsync() => AskAsync<int>("d => walk.sequence(d)", DeviceId);

    /// <summary>What is on the device's disk after a number, in its order.</summary>
    public async Task<IReadOnlyList<Entry>> AfterAsync(int known)
    {
        var text = await AskAsync<string>("async ([d, k]) => JSON.stringify(await walk.after(d, k))", new object[] { DeviceId, known });
        return JsonSerializer.Deserialize<List<Entry>>(text, EntryJson.Options)!;
    }

    /// <summary>Learns who it is.</summary>
    public async Task KnowItselfAsync() => DeviceId = (await LessonAsync())["deviceId"]!.GetValue<string>();

    /// <summary>The lesson as its disk has it.</summary>
    public async Task<JsonNode> LessonAsync() => JsonNode.Parse(await AskAsync<string>("walk.lesson().then(JSON.stringify)"))!;

    /// <summary>Goes to an address of the floor and waits for its first screen.</summary>
    public async Task GoAsync(Uri floor, string path)
    {
        await Page.GotoAsync(new Uri(floor, path).ToString());
        await Page.EvaluateAsync("s => walk.until(s)", Screens);
    }

    /// <summary>Loads the page again, with a network or without.</summary>
    public async Task ReloadAsync()
    {
        await Page.ReloadAsync();
        await Page.EvaluateAsync("s => walk.until(s)", Screens);
    }

    /// <summary>Runs a sentence of the page's script.</summary>
    public Task<T> AskAsync<T>(string script, object? about = null) =>
        IsGoing ? throw new PlaywrightException("The page is going away.") : Page.EvaluateAsync<T>(script, about);

    /// <summary>Makes a page ready for tests.</summary>
    public static async Task<IPage> ReadyAsync(IPage page)
    {
        page.SetDefaultTimeout(Patience);
        page.Context.SetDefaultTimeout(Patience);
        await page.Context.AddInitScriptAsync(FloorScript.Text);
        return page;
    }
}
