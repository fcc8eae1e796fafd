using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class LivePanelTests(Browser browser)
{
    [Theory]
    [InlineData(1440, 1000, "en-GB", false, @"Level 2: .*\d+ to \d+", "You could ask")]
    [InlineData(1024, 900, "es-ES", true, @"Nivel 2: .*de \d+ a \d+", "Podrías preguntar")]
    [InlineData(320, 800, "en-GB", false, @"Level 2: .*\d+ to \d+", "You could ask")]
    public async Task Typing_TwoSetsWhereHardlyAnythingWorks_SaysSoAsideAndAsksOnce(int width, int height, string language, bool isDark, string says, string asks)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = language, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = width, Height = height },
        });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        var panel = await OpenAsync(page, served);
        var places = await PlacesAsync(page);
        var before = int.Parse((await panel.GetAttributeAsync("data-entries"))!, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(0, await panel.Locator("dt").CountAsync());

        // Level 2, four predicted, nothing reached, and the same once more: 14 entries.
        await page.Locator("#results input[data-cell]").First.FocusAsync();
        await page.Keyboard.TypeAsync("2400000");
        await page.Locator("#results input[data-cell^='1.2.Level']").FocusAsync();
        await page.Keyboard.TypeAsync("2400000");
        await SpeaksOfAsync(panel, before + 14);

        Assert.Matches(says, (await panel.Locator("dl").TextContentAsync())!.ReplaceLineEndings(" "));
        Assert.Contains(asks, await panel.TextContentAsync());
        Assert.Equal(1, await panel.Locator(".ask").CountAsync());
        Assert.Equal(1, await panel.Locator("svg").CountAsync());
        // What it says stands aside: no cell has moved, and the cell that was typed into last is the one with the focus.
        Assert.Equal(places, await PlacesAsync(page));
        Assert.StartsWith("1.2.", await page.EvaluateAsync<string>("document.activeElement.dataset.cell"));

        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "The page scrolls sideways.");
        // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }

    [Fact]
    public async Task TurningThePage_ToAPupilWithoutEntries_SaysNothingOfTheOneBefore()
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        var panel = await OpenAsync(page, served);
        await page.Locator("#results input[data-cell]").First.FocusAsync();
        await page.Keyboard.TypeAsync("24101");
        await Assertions.Expect(panel.Locator("dt")).ToHaveCountAsync(1, new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });
        await page.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(panel).ToContainTextAsync("Nothing to say yet", new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });
        await Assertions.Expect(panel).ToHaveAttributeAsync("data-reads", (await page.Locator("#results").GetAttributeAsync("data-pupil"))!, new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });
        Assert.Equal(0, await panel.Locator("dt").CountAsync());
    }

    // The fourth lesson of the first class is typed in by half: the page opens at the first pupil who is not.
    private static async Task<ILocator> OpenAsync(IPage page, ServedHost served)
    {
        await page.GotoAsync(new Uri(served.Address, "/lessons").ToString());
        var results = await page.Locator("main a[href$='/results']").First.GetAttributeAsync("href");
        await page.GotoAsync(new Uri(served.Address, results).ToString());
        await page.Locator("#results[data-live=true]").WaitForAsync();
        var panel = page.Locator(".results-live");
        await page.Locator(".results-live[data-entries]").WaitForAsync();
        return panel;
    }

    private static Task SpeaksOfAsync(ILocator panel, int entryCount) => Assertions.Expect(panel)
        .ToHaveAttributeAsync("data-entries", $"{entryCount}", new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });

    private static Task<string> PlacesAsync(IPage page) => page.EvaluateAsync<string>(
        "JSON.stringify([...document.querySelectorAll('input[data-cell]')].map(c => { const r = c.getBoundingClientRect(); return [r.x, r.y + scrollY, r.width]; }))");
}
