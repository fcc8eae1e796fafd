using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class ReachTests(Browser browser)
{
    [Fact]
    public async Task Edit_TakingLevelsOff_ChangesTheWordsAndPuttingTheAddedOneOnChangesThemBack()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served);
        var headline = page.Locator(".reach-head").First;
        var before = await headline.TextContentAsync();
        Assert.Matches(@"^About \d+ of \d+ pupils \(\d+ to \d+ could\)", before!);
        Assert.Matches(@"Behind it: \d+ tries", await page.Locator(".reach-grounds").TextContentAsync() ?? "");

        // Down to the last level of the first task.
        var levels = page.Locator("form fieldset.group").First.GetByRole(AriaRole.Checkbox, new() { Checked = true });
        for (var count = await levels.CountAsync(); count > 1; count--) await levels.First.UncheckAsync();
        // While boxes are unticked the words may change more than once: those about the last level alone count.
        await SpeaksOfAsync(page, 1);
        var fewer = (await headline.TextContentAsync())!;
        Assert.True(Within(fewer) < Within(before!), $"{fewer} after {before}");

        var task = page.Locator(".reach-task").First;
        Assert.Contains("?", await task.Locator(".reach-notes").TextContentAsync());
        await task.Locator(".reach-notes button").ClickAsync();
        await SpeaksOfAsync(page, 2);
        Assert.True(Within((await headline.TextContentAsync())!) > Within(fewer));
        Assert.Equal(2, await levels.CountAsync());
    }

    [Theory]
    [InlineData(1440, false)]
    [InlineData(1440, true)]
    [InlineData(320, false)]
    [InlineData(320, true)]
    public async Task Panel_AtAnyWidth_FitsAndHasNothingSeriousForAxe(int width, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = width, Height = 900 },
        });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await OpenAsync(page, served);
        await page.EvaluateAsync("document.querySelectorAll('.reach details').forEach(d => d.open = true)");
        await page.Locator(".reach svg").First.WaitForAsync();
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "The page scrolls sideways.");
        // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.Equal("Class to look at", await page.Locator("label[for=reach-class]").TextContentAsync());
    }

    private static async Task OpenAsync(IPage page, ServedHost served)
    {
        await page.GotoAsync(new Uri(served.Address, "/sheets").ToString());
        var sheet = await page.Locator("main a[href^='/sheets/0']").First.GetAttributeAsync("href");
        await page.GotoAsync(new Uri(served.Address, sheet).ToString());
        await page.Locator(".reach-head").First.WaitForAsync();
    }

    private static Task SpeaksOfAsync(IPage page, int levelCount) => Assertions.Expect(page.Locator(".reach-task").First)
        .ToHaveAttributeAsync("data-levels", $"{levelCount}", new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });

    private static int Within(string headline) => int.Parse(headline.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
}
