using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class HallTests(Browser browser)
{
    [Fact]
    public async Task Hall_DrawnLaidOutAndMovedByHand_IsKept()
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 1000 }, Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();

        // A hall of one's own: a bad number is said and loses nothing, the drawing follows what can be read.
        await page.GotoAsync(new Uri(served.Address, "/halls/new").ToString());
        await page.Locator("#name:enabled").FillAsync("Old gym");
        await page.Locator("#width").FillAsync("1x");
        await page.Locator("#width-finding").WaitForAsync();
        await page.Locator("#width").FillAsync("18,5");
        await page.Locator(".hall-shown svg", new() { HasText = "18.5 m" }).WaitForAsync();
        Assert.Equal("Old gym", await page.Locator("#name").InputValueAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a thing" }).ClickAsync();
        await page.Locator("#thing-1-name").FillAsync("Stage");
        await page.Locator("#thing-1-width").FillAsync("6");
        await page.Locator(".hall-shown svg", new() { HasText = "Stage" }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await page.Locator(".save-line .state", new() { HasText = "Saved" }).WaitForAsync();
        await SeriousOnAsync(page, "halls");

        // The lesson that nobody laid out yet, in that hall.
        var lesson = await LessonAsync(served, "data-key=\"m0\"", isThere: false);
        await OpenAsync(page, served, lesson);
        await page.Locator("#hall-pick").SelectOptionAsync(new SelectOptionValue { Label = "Old gym" });
        await page.Locator("#age").SelectOptionAsync("11");
        await page.Locator("#mat-count").FillAsync("6");
        await page.Locator("#lay-out").ClickAsync();
        await page.Locator("[data-key=m5]").WaitForAsync();
        await SettledAsync(page, 0);

        // A drag follows the mouse before the program has heard of it; let go on mat 2 it clashes.
        var (from, to) = (await MiddleAsync(page, "m0"), await MiddleAsync(page, "m1"));
        await page.Mouse.MoveAsync(from.X, from.Y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((from.X + to.X) / 2, (from.Y + to.Y) / 2, new() { Steps = 6 });
        await page.Locator(".hold[data-key=m0][transform]").WaitForAsync();
        Assert.Equal("0", await page.Locator("#hall").GetAttributeAsync("data-clashes"));
        await page.Mouse.MoveAsync(to.X, to.Y, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        await page.Locator("#hall:not([data-clashes='0'])").WaitForAsync();
        await page.Locator(".clashes", new() { HasText = "Mat 1 and mat 2" }).First.WaitForAsync();

        // Each sentence leads to its mat, where keys take over: half metres until nothing is too near, then one step more and one back.
        await page.GetByRole(AriaRole.Button, new() { Name = "Show mat 1" }).First.ClickAsync();
        await page.Locator("#hall-mat-1:focus").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await SettledAsync(page, 0);
        await page.Locator("#hall-mat-1").FocusAsync();
        var x = await NumberAsync(page, "m0", "x");
        await page.Keyboard.PressAsync("ArrowRight");
        await WhereAsync(page, "m0", "x", Math.Round(x + 0.1, 1, MidpointRounding.AwayFromZero));
        var y = await NumberAsync(page, "m0", "y");
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await WhereAsync(page, "m0", "y", y + 0.5);
        await page.Keyboard.PressAsync("r");
        await page.Locator("#mats tbody tr:first-child input[type=checkbox]").WaitForAsync();
        for (var i = 0; i < 4; i++) await page.Keyboard.PressAsync("Shift+ArrowDown");
        await page.Locator("#hall:not([data-clashes='0'])").WaitForAsync();
        Assert.Contains("front wall", await page.Locator("#too-near").InnerTextAsync());
        // The table does the same in numbers; the clash goes.
        await page.GetByLabel("Mat 1, from the front wall in metres").FillAsync("3,5");
        await page.Keyboard.PressAsync("Tab");
        await WhereAsync(page, "m0", "y", 3.5);

        // Stations and rounds; then everything is there again after loading anew.
        await page.Locator("#add-station").ClickAsync();
        await page.Locator("#station-1").WaitForAsync();
        await page.Locator("#add-station").ClickAsync();
        await page.Locator("#station-2").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Share the mats out" }).ClickAsync();
        await page.Locator(".hall-stations", new() { HasText = "mats 1" }).WaitForAsync();
        await page.Locator(".hall-rounds tbody tr").Nth(1).WaitForAsync();
        await page.Locator("#hall[data-saved=true]").WaitForAsync();
        var before = await page.Locator(".hall-map .hold").EvaluateAllAsync<string>("all => all.map(e => [e.dataset.key, e.dataset.x, e.dataset.y].join()).join(';')");
        await SeriousOnAsync(page, "space");
        await OpenAsync(page, served, lesson);
        Assert.Equal(before, await page.Locator(".hall-map .hold").EvaluateAllAsync<string>("all => all.map(e => [e.dataset.key, e.dataset.x, e.dataset.y].join()).join(';')"));
        Assert.Equal("Old gym", await page.Locator("#hall-pick option:checked").InnerTextAsync());
        Assert.Equal(2, await page.Locator(".hall-stations > li").CountAsync());

        // Source: [WCAG22] 1.4.10: the drawing scrolls in itself, the page does not.
        await page.SetViewportSizeAsync(320, 800);
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await SeriousOnAsync(page, "space, dark and narrow");
    }

    private static async Task OpenAsync(IPage page, ServedHost served, string path)
    {
        await page.GotoAsync(new Uri(served.Address, path).ToString());
        await page.Locator("#hall[data-live=true]").WaitForAsync();
    }

    private static Task SettledAsync(IPage page, int clashes) => page.Locator($"#hall[data-saved=true][data-clashes='{clashes}']").WaitForAsync();

    private static async Task<(float X, float Y)> MiddleAsync(IPage page, string key)
    {
        await page.Locator($"[data-key={key}]").ScrollIntoViewIfNeededAsync();
        var box = (await page.Locator($"[data-key={key}] .ring").BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    private static async Task<double> NumberAsync(IPage page, string key, string name) =>
        double.Parse((await page.Locator($"[data-key={key}]").GetAttributeAsync("data-" + name))!, CultureInfo.InvariantCulture);

    private static Task WhereAsync(IPage page, string key, string name, double metres) => page.WaitForFunctionAsync(
        "([key, name, metres]) => Math.abs(Number(document.querySelector(`[data-key=${key}]`).dataset[name]) - metres) < 0.051", new object[] { key, name, metres });

    private static async Task<string> LessonAsync(ServedHost served, string what, bool isThere)
    {
        var list = await served.Client.GetStringAsync("/lessons", TestContext.Current.CancellationToken);
        foreach (System.Text.RegularExpressions.Match link in System.Text.RegularExpressions.Regex.Matches(list, "/lessons/[0-9a-f]{8}-[0-9a-f-]{27}"))
        {
            var space = link.Value + "/space";
            if ((await served.Client.GetStringAsync(space, TestContext.Current.CancellationToken)).Contains(what, StringComparison.Ordinal) == isThere) return space;
        }
        throw new InvalidOperationException("No lesson of the demo school is like that.");
    }

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}:\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
