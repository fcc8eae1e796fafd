using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class PlanToEvidenceTests(Browser browser)
{
    [Fact]
    public async Task Walk_PlanPrintTypeRead_EndsInEvidenceOfWhatWasTyped()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        async Task OpenAsync(string path)
        {
            await page.GotoAsync(new Uri(served.Address, path).ToString());
            await SeriousOnAsync(page, path);
        }

        await OpenAsync("/");

        // Plan: a sheet of one task without its last level, and a lesson that uses it.
        await OpenAsync("/sheets/new");
        await page.Locator("#title").FillAsync("Walked through");
        await page.Locator("#add-task").SelectOptionAsync(new SelectOptionValue { Label = "One-foot balance" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        var levels = page.GetByRole(AriaRole.Group, new() { Name = "Levels of One-foot balance" }).GetByRole(AriaRole.Checkbox);
        await levels.Last.UncheckAsync();
        await SeriousOnAsync(page, "the new sheet");
        await page.Locator(".save-line button[type=submit]").ClickAsync();
        await page.Locator("a[href*='/lessons/new?sheet=']").ClickAsync();
        await page.Locator("select#class:enabled").SelectOptionAsync(new SelectOptionValue { Label = "7 Heron" });
        await page.Locator("#date").FillAsync("2026-12-09");
        await SeriousOnAsync(page, "the new lesson");
        await page.Locator(".save-line button[type=submit]").ClickAsync();

        // Print: freeze the sheet, then take the PDF that the page links to.
        var prepare = page.GetByRole(AriaRole.Button, new() { Name = "Prepare to print" });
        await prepare.WaitForAsync();
        await SeriousOnAsync(page, "the lesson");
        var lesson = new Uri(page.Url).AbsolutePath;
        await prepare.ClickAsync();
        var print = page.Locator("a[href*='/print/']").First;
        await print.WaitForAsync();
        var pdf = await served.Client.GetByteArrayAsync(await print.GetAttributeAsync("href"), TestContext.Current.CancellationToken);
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        await OpenAsync($"{lesson}/sheet");

        // Type the first set of the first pupil by keys alone: level 2, four predicted, three of five reached.
        await page.GotoAsync(new Uri(served.Address, $"{lesson}/results").ToString());
        await page.Locator("#results[data-live=true]").WaitForAsync();
        await SeriousOnAsync(page, "results");
        var pupil = await page.Locator("#results").GetAttributeAsync("data-pupil");
        await page.Locator("#results input[data-cell]").First.FocusAsync();
        await page.Keyboard.TypeAsync("2411010");
        await page.Keyboard.PressAsync("Tab");
        await page.Locator("#results .when-saved", new() { HasText = "Saved: 7 entries." }).WaitForAsync();

        // Read: the evidence speaks of one pupil and those tries, and each number leads to its entries.
        await OpenAsync($"{lesson}/evidence");
        Assert.Contains("Written by 1 of 28 pupils: 1 set", await page.Locator("main").TextContentAsync());
        var row = page.Locator("table.pupil-evidence tbody").Filter(new() { Has = page.Locator($"a[href*='{pupil}']") }).First;
        Assert.Contains("3 of 5", await row.TextContentAsync());
        await page.Locator("a[href*='/entries']").First.ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/entries", StringComparison.Ordinal));
        await SeriousOnAsync(page, "entries");
    }

    [Theory]
    [InlineData("/classes", false)]
    [InlineData("/roster", false)]
    [InlineData("/tasks", false)]
    [InlineData("/settings", false)]
    [InlineData("/", true)]
    [InlineData("/tasks/new", true)]
    [InlineData("/sheets/new", true)]
    public async Task Page_InLightOrDark_HasNothingSeriousForAxe(string path, bool isDark)
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light });
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, path).ToString());
        await SeriousOnAsync(page, path);
    }

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        await page.Locator("h1").First.WaitForAsync();
        var found = await page.RunAxe();
        var serious = found.Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}:\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
