using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Slantwise.Bench.Floor.Budgets;

// What the pages of a lesson cost a tablet: bytes, time until they can be used, time from a finger to what it sees. Chromium slowed down four times.
const double Slowness = 4;
const int Rounds = 15;
const string Controlled = "new Promise((done) => navigator.serviceWorker.controller ? done() : navigator.serviceWorker.addEventListener('controllerchange', () => done(), { once: true }))";
var (program, folder, tapCount) = (Path.GetFullPath(args[0]), Path.GetFullPath(args[1]), args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 200);
using var gym = await OpenGym.StartAsync(program, folder);
using var driver = await Playwright.CreateAsync();
await using var chromium = await driver.Chromium.LaunchAsync(new()
{
    ExecutablePath = Environment.GetEnvironmentVariable("SLANTWISE_CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium",
    Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
Say($"Chromium {chromium.Version}, {Environment.ProcessorCount} processors, slowed {Slowness} times; the machine's load {(await File.ReadAllTextAsync("/proc/loadavg")).Trim()}");

await SayBytesAsync();
await SayStartsAsync();
await SayLessonAsync();
Say($"the machine's load at the end {(await File.ReadAllTextAsync("/proc/loadavg")).Trim()}");

async Task<(IPage Page, ICDPSession Wire)> OpenAsync(IBrowserContext context)
{
    var page = await context.NewPageAsync();
    var wire = await context.NewCDPSessionAsync(page);
    await wire.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = Slowness });
    return (page, wire);
}

async Task<IBrowserContext> DeviceAsync()
{
    var context = await chromium.NewContextAsync(new() { ViewportSize = new() { Width = 412, Height = 800 }, Locale = "en-GB", HasTouch = true, IsMobile = true });
    await context.AddInitScriptAsync(PageEye.Script);
    return context;
}

static Task<double> UsableAsync(IPage page) => page.EvaluateAsync<double>("eye.usable");

async Task JoinAsync(IPage page, int kind)
{
    await page.GotoAsync(new Uri(gym.Address, $"/floor/#join={gym.Code}").ToString());
    await page.Locator(".card.kind").Nth(kind).ClickAsync();
    await page.Locator(".frame .page").WaitForAsync();
}

async Task SayBytesAsync()
{
    await using var context = await DeviceAsync();
    var (page, wire) = await OpenAsync(context);
    var (names, kinds, bodies, got) = (new Dictionary<string, string>(), new Dictionary<string, string>(), new Dictionary<string, double>(), new List<(string Name, string Coding, double ByteCount, double BodyByteCount)>());
    wire.Event("Network.responseReceived").OnEvent += (_, e) =>
    {
        var response = e!.Value.GetProperty("response");
        var id = e.Value.GetProperty("requestId").GetString()!;
        names[id] = new Uri(response.GetProperty("url").GetString()!).AbsolutePath;
        kinds[id] = response.GetProperty("headers").EnumerateObject().FirstOrDefault(h => h.Name.Equals("content-encoding", StringComparison.OrdinalIgnoreCase)) is { Value.ValueKind: JsonValueKind.String } h ? h.Value.GetString()! : "";
    };
    wire.Event("Network.loadingFinished").OnEvent += (_, e) =>
    {
        var id = e!.Value.GetProperty("requestId").GetString()!;
        if (names.TryGetValue(id, out var name)) got.Add((name, kinds[id], e.Value.GetProperty("encodedDataLength").GetDouble(), bodies.GetValueOrDefault(id)));
    };
    wire.Event("Network.dataReceived").OnEvent += (_, e) =>
    {
        var id = e!.Value.GetProperty("requestId").GetString()!;
        bodies[id] = bodies.GetValueOrDefault(id) + e.Value.GetProperty("encodedDataLength").GetDouble();
    };
    await wire.SendAsync("Network.enable");
    await page.GotoAsync(new Uri(gym.Address, "/floor/").ToString());
    await UsableAsync(page);
    await Task.Delay(3000);
    Say($"first load: {got.Sum(g => g.BodyByteCount) / 1000:0.0} kB in {got.Count} answers, {got.Sum(g => g.ByteCount) / 1000:0.0} kB with their headers");
    foreach (var (name, coding, _, bodyByteCount) in got.OrderByDescending(g => g.BodyByteCount)) Say($"  {bodyByteCount / 1000,6:0.0} kB  {name} {coding}");
    var before = got.Count;
    await page.Locator("#code").FillAsync(gym.Code);
    await page.Locator(".join-code .button.main").ClickAsync();
    await page.Locator(".card.kind").Nth(2).ClickAsync();
    await page.Locator(".frame .page").WaitForAsync();
    var first = got.Skip(before).ToList();
    Say($"from there to a station's first screen: {first.Sum(g => g.ByteCount) / 1000:0.0} kB in {first.Count} answers, the lesson among them with {first.Where(g => g.Name.StartsWith("/sync", StringComparison.Ordinal)).Sum(g => g.ByteCount) / 1000:0.0} kB");
}

async Task SayStartsAsync()
{
    var (cold, far, kept, lesson, lessonCold, offline) = (new List<double>(), new List<double>(), new List<double>(), new List<double>(), new List<double>(), new List<double>());
    for (var round = 0; round < Rounds; round++)
    {
        await using (var fresh = await DeviceAsync())
        {
            var (page, _) = await OpenAsync(fresh);
            await page.GotoAsync(new Uri(gym.Address, "/floor/").ToString());
            cold.Add(await UsableAsync(page));
            await page.EvaluateAsync("navigator.serviceWorker.register('/floor/sw.js', { scope: '/floor/' }).then(() => navigator.serviceWorker.ready)");
            await page.EvaluateAsync(Controlled);
            await page.ReloadAsync();
            kept.Add(await UsableAsync(page));
        }
        await using (var away = await DeviceAsync())
        {
            var (page, wire) = await OpenAsync(away);
            await wire.SendAsync("Network.enable");
            await wire.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = 40, ["downloadThroughput"] = 500_000, ["uploadThroughput"] = 250_000 });
            await page.GotoAsync(new Uri(gym.Address, "/floor/").ToString());
            far.Add(await UsableAsync(page));
        }
        if (round >= Rounds / 3) continue;
        await using var joined = await DeviceAsync();
        var (tablet, line) = await OpenAsync(joined);
        await JoinAsync(tablet, 2);
        await tablet.EvaluateAsync(Controlled);
        for (var again = 0; again < 3; again++)
        {
            await tablet.ReloadAsync();
            lesson.Add(await UsableAsync(tablet));
            await joined.SetOfflineAsync(true);
            await tablet.ReloadAsync();
            offline.Add(await UsableAsync(tablet));
            await joined.SetOfflineAsync(false);
            await line.SendAsync("Network.enable");
            await line.SendAsync("Network.setBypassServiceWorker", new() { ["bypass"] = true });
            await line.SendAsync("Network.setCacheDisabled", new() { ["cacheDisabled"] = true });
            await tablet.ReloadAsync();
            lessonCold.Add(await UsableAsync(tablet));
            await line.SendAsync("Network.setBypassServiceWorker", new() { ["bypass"] = false });
            await line.SendAsync("Network.setCacheDisabled", new() { ["cacheDisabled"] = false });
        }
    }
    Say($"from navigation to a screen that can be used, painted:");
    Say($"  first page, nothing kept                        {cold.Said()}");
    Say($"  first page, nothing kept, 40 ms away, 4 Mbit/s  {far.Said()}");
    Say($"  first page, from the service worker             {kept.Said()}");
    Say($"  joined lesson, without worker and cache         {lessonCold.Said()}");
    Say($"  joined lesson, from the service worker          {lesson.Said()}");
    Say($"  joined lesson, without a network                {offline.Said()}");
}

async Task SayLessonAsync()
{
    await using var context = await DeviceAsync();
    var (page, wire) = await OpenAsync(context);
    await JoinAsync(page, 2);
    await Task.Delay(2000);
    var heapBefore = await HeapAsync(wire);
    for (var taps = 0; taps < tapCount;)
    {
        if (await page.EvaluateAsync<double[]?>("eye.next()") is not { } at) throw new InvalidOperationException($"Nothing to tap at {await page.EvaluateAsync<string>("eye.step() + ' ' + document.body.innerText")}");
        await page.EvaluateAsync("([x, y]) => eye.aim(x, y)", at);
        var finger = new Dictionary<string, object> { ["x"] = at[0], ["y"] = at[1] };
        await wire.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchStart", ["touchPoints"] = new[] { finger } });
        // A finger rests for about a tenth of a second.
        await Task.Delay(90);
        await wire.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        // Longer than pages take for the same finger.
        await Task.Delay(550);
        taps = await page.EvaluateAsync<int>("eye.taps.length");
    }
    var told = await page.EvaluateAsync<JsonElement>("eye.taps");
    var taken = told.EnumerateArray().ToList();
    double[] Between(string from, string to) => [.. taken.Where(t => t.TryGetProperty(from, out var f) && t.TryGetProperty(to, out var u) && u.ValueKind == JsonValueKind.Number && f.ValueKind == JsonValueKind.Number).Select(t => t.GetProperty(to).GetDouble() - t.GetProperty(from).GetDouble())];
    Say($"{taken.Count} taps, each a finger that rests for 90 ms:");
    Say($"  finger down to pressed, painted                {Between("downMs", "shownMs").Said()}");
    Say($"  finger up to the next step, kept and painted   {Between("clickMs", "nextMs").Said()}");
    var entries = await page.EvaluateAsync<int>("new Promise((done) => { const o = indexedDB.open('slantwise-floor'); o.onsuccess = () => { const c = o.result.transaction('entries').objectStore('entries').count(); c.onsuccess = () => { o.result.close(); done(c.result); }; }; })");
    Say($"  entries on the device {entries}; script memory after collecting {heapBefore:0.0} MB before, {await HeapAsync(wire):0.0} MB after");
}

static async Task<double> HeapAsync(ICDPSession wire)
{
    await wire.SendAsync("HeapProfiler.collectGarbage");
    var told = await wire.SendAsync("Runtime.getHeapUsage");
    return told!.Value.GetProperty("usedSize").GetDouble() / 1e6;
}

static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
