using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class BalanceStudioTests(Browser browser)
{
    [Fact]
    public async Task Drag_AHandInTheFigure_ChangesTheMarginAndIsUndone()
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 }, Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance");
        var before = await MarginAsync(page);

        var hand = (await page.Locator("svg[data-surface=figure] [data-handle='0-hand-left'] .dot").BoundingBoxAsync())!;
        var (x, y) = (hand.X + hand.Width / 2, hand.Y + hand.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + 120, y - 160, new() { Steps = 12 });
        // While the hand is still held the answer has moved already, and nothing was said yet.
        await page.WaitForFunctionAsync("before => document.querySelector('#numbers .facts dd').textContent !== before", before);
        Assert.Equal("", await page.Locator("#said").TextContentAsync());
        await page.Mouse.UpAsync();
        await page.Locator("#said", new() { HasText = "Held" }).WaitForAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.WaitForFunctionAsync("before => document.querySelector('#numbers .facts dd').textContent === before", before);
    }

    [Fact]
    public async Task Drag_AFootInThePlan_WidensTheBase()
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 }, Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance");
        var place = page.Locator("#touches input").Nth(1);
        var before = double.Parse(await place.InputValueAsync());
        var foot = (await page.Locator("svg[data-surface=plan] [data-handle='0-on-foot-left'] .dot").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(foot.X + foot.Width / 2, foot.Y + foot.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(foot.X - 40, foot.Y, new() { Steps = 8 });
        await page.Mouse.UpAsync();
        // The performer's left is on the plan's left.
        await page.WaitForFunctionAsync("before => Number(document.querySelectorAll('#touches input')[1].value) > before + 1", before);
    }

    [Fact]
    public async Task Touch_AHandle_DragsItAndDoesNotScrollThePage()
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 390, Height = 800 }, Locale = "en-GB", HasTouch = true, IsMobile = true });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance");
        await page.Locator(".studio-figure").ScrollIntoViewIfNeededAsync();
        var (before, scrolled) = (await MarginAsync(page), await page.EvaluateAsync<double>("scrollY"));
        var hand = (await page.Locator("svg[data-surface=figure] [data-handle='0-head-middle'] .dot").BoundingBoxAsync())!;
        var (x, y) = (hand.X + hand.Width / 2, hand.Y + hand.Height / 2);
        var finger = await page.Context.NewCDPSessionAsync(page);
        async Task TouchAsync(string type, params object[] points) =>
            await finger.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = type, ["touchPoints"] = points });
        await TouchAsync("touchStart", new { x, y });
        for (var i = 1; i <= 8; i++) await TouchAsync("touchMove", new { x = x + 5 * i, y = y + 6 * i });
        await TouchAsync("touchEnd");
        await page.WaitForFunctionAsync("before => document.querySelector('#numbers .facts dd').textContent !== before", before);
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("scrollY"));
    }

    [Fact]
    public async Task Keys_OnAJointAndALesson_ChangeTheVerdictWithoutAMouse()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance?posture=tripod");
        Assert.Contains("Not allowed on a sheet", await page.Locator(".not-allowed").TextContentAsync());
        Assert.Contains("10.1016/j.jbmt.2014.10.002", await page.Locator("#head").TextContentAsync());

        var narrow = page.Locator("#numbers .facts dd").Nth(4);
        var before = double.Parse((await narrow.TextContentAsync())!, System.Globalization.CultureInfo.InvariantCulture);
        var lesson = page.GetByRole(AriaRole.Button, new() { Name = "Head towards the line of the hands" });
        await lesson.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForFunctionAsync("before => Number(document.querySelectorAll('#numbers .facts dd')[4].textContent) < before", before);

        await page.Locator("#limb-LegLeft summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        var knee = page.Locator("#kneeflexion-left");
        var angle = double.Parse(await knee.InputValueAsync());
        await knee.FocusAsync();
        for (var step = 1; step <= 3; step++)
        {
            await page.Keyboard.PressAsync("ArrowLeft");
            await page.WaitForFunctionAsync("angle => Number(document.querySelector('#kneeflexion-left').value) === angle", angle - step);
        }
        Assert.NotEqual("", await page.Locator("#said").TextContentAsync());
    }

    [Fact]
    public async Task Keys_OnAJointFasterThanTheAnswers_AreNotDrawnOver()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance?posture=tripod");
        await page.Locator("#limb-LegLeft summary").ClickAsync();
        // Twelve steps at once, as a held key makes them on a busy machine; what answers write into the slider is written down.
        var last = await page.EvaluateAsync<double>("""
            () => {
              const knee = document.querySelector('#kneeflexion-left');
              for (let step = 0; step < 12; step++) { knee.stepDown(); knee.dispatchEvent(new Event('input', { bubbles: true })); }
              const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
              window.drawnOver = [];
              Object.defineProperty(knee, 'value', { get() { return value.get.call(this); }, set(v) { window.drawnOver.push(v); value.set.call(this, v); } });
              return Number(knee.value);
            }
            """);
        await page.WaitForFunctionAsync("last => Number(document.querySelector('#kneeflexion-left + input').value) === last", last);
        Assert.Empty(await page.EvaluateAsync<string[]>("window.drawnOver"));
        Assert.Equal(last, double.Parse(await page.Locator("#kneeflexion-left").InputValueAsync(), System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Open_AFileThatCannotTouch_SaysWhatAndByHowMuch()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served, "/balance");
        async Task GiveAsync(string json) => await page.Locator("#open-file").SetInputFilesAsync(
            new FilePayload { Name = "mine.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(json) });

        await GiveAsync("""{ "key": "mine", "group": "upright", "touches": ["foot.left", "foot.right", "crown"] }""");
        await page.Locator("#make .notice", new() { HasText = "cm" }).WaitForAsync();
        await GiveAsync("""{ "key": "mine", "group": "upright", "joints": { "kneeFlexion": 900 }, "touches": ["foot.left"] }""");
        await page.Locator("#make .notice", new() { HasText = "kneeFlexion 900" }).WaitForAsync();

        // What is saved can be opened again.
        var address = await page.Locator("a[download]").GetAttributeAsync("href");
        await GiveAsync(Uri.UnescapeDataString(address![(address!.IndexOf(',') + 1)..]).Replace("two-feet", "mine"));
        await page.Locator("#make .notice", new() { HasText = "Opened: mine.json" }).WaitForAsync();
        Assert.Contains("mine", await page.Locator("#posture").InnerTextAsync());
    }

    [Fact]
    public async Task Compare_TwoPostures_SaysTheDifferenceInWords()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/balance/compare?a=two-feet&b=stork").ToString());
        await page.Locator("#posture-a:enabled").WaitForAsync();
        Assert.Contains("B's base is narrower for its length", await page.Locator("#differences").TextContentAsync());
        Assert.Contains("nothing about strength, fear or practice", await page.Locator("#differences").TextContentAsync());
        await page.Locator("#posture-b").SelectOptionAsync("two-feet");
        await page.Locator("#differences", new() { HasText = "about the same" }).WaitForAsync();
        await SeriousOnAsync(page, "compare");
    }

    [Theory]
    [InlineData("/balance?posture=tripod", false, 1280)]
    [InlineData("/balance?posture=pair-lean-out", true, 768)]
    [InlineData("/balance", true, 320)]
    [InlineData("/balance/compare?a=tripod&b=handstand", true, 320)]
    public async Task Page_LightOrDarkAtAnyWidth_HasNothingSeriousForAxeAndFits(string path, bool isDark, int width)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = width, Height = 800 },
        });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, path).ToString());
        await page.Locator("fieldset.live:enabled").First.WaitForAsync();
        foreach (var limb in await page.Locator("details.limb summary").AllAsync()) await limb.ClickAsync();
        await SeriousOnAsync(page, path);
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
    }

    private static async Task OpenAsync(IPage page, ServedHost served, string path)
    {
        await page.GotoAsync(new Uri(served.Address, path).ToString());
        await page.Locator("#studio[data-live=true]").WaitForAsync();
    }

    private static async Task<string> MarginAsync(IPage page) => (await page.Locator("#numbers .facts dd").First.TextContentAsync())!;

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        var found = await page.RunAxe();
        var serious = found.Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}:\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
