using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class LevelPagesTests(Browser browser)
{
    [Fact]
    public async Task Level_FollowedByKeyboard_LeadsToItsNeighbourItsEntriesAndAPupil()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, await ClassAsync(served) + "/evidence").ToString());

        await FollowAsync(page, "#task-1 tbody th a");
        await page.WaitForURLAsync(url => url.Contains("/levels/"));
        var first = await page.Locator("h1").InnerTextAsync();
        Assert.StartsWith("Level 1", first);
        Assert.Matches("of ten tries|not enough tries yet", (await page.Locator(".gist p").InnerTextAsync()).ToLowerInvariant());

        await FollowAsync(page, "nav.neighbours a[rel=next]");
        await page.Locator("h1", new() { HasTextString = "Level 2" }).WaitForAsync();
        // The one looked at is told apart from those to go to.
        Assert.Equal(1, await page.Locator("#beside [aria-current=page]").CountAsync());

        var labels = await page.Locator("#pupils tbody th").AllInnerTextsAsync();
        Assert.Equal(labels.Order(StringComparer.InvariantCultureIgnoreCase), labels);

        foreach (var link in new[] { "#glance .share a", "#cues td a", "#pupils .share a" })
        {
            var there = await page.Locator(link).First.GetAttributeAsync("href");
            var entries = await browser.NewPageAsync();
            await entries.GotoAsync(new Uri(served.Address, there!).ToString());
            Assert.True(await entries.Locator("table.entries tbody tr").CountAsync() > 0, $"{link} leads to no entry.");
            await entries.Context.CloseAsync();
        }

        await FollowAsync(page, "#pupils tbody th a");
        await page.Locator("table.chances").First.WaitForAsync();
        await FollowAsync(page, "#task-1 table.chances th a");
        await page.Locator("h1", new() { HasTextString = "Level 1" }).WaitForAsync();
    }

    [Theory]
    [InlineData(1440, false)]
    [InlineData(360, true)]
    [InlineData(320, false)]
    public async Task LevelAndPupil_OnALargeAndASmallScreen_HaveNothingSeriousForAxeAndFit(int widthPx, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        await using var served = await ServedHost.StartAsync();
        foreach (var address in await PagesAsync(served))
        {
            await page.GotoAsync(new Uri(served.Address, address).ToString());
            await page.Locator("table.chances").First.WaitForAsync();
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
            // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px; wide tables scroll inside the page.
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx, $"{address} is too wide.");
            var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
            Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{address} {v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        }
    }

    [Fact]
    public async Task LevelAndPupil_InSpanish_SayEachCautionOnceAndNoEnglish()
    {
        var page = await browser.NewPageAsync(new() { Locale = "es-ES" });
        await using var served = await ServedHost.StartAsync();
        foreach (var address in await PagesAsync(served))
        {
            await page.GotoAsync(new Uri(served.Address, address).ToString());
            await page.Locator("table.chances").First.WaitForAsync();
            var cautions = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('[data-caution]')].map(c => c.dataset.caution)");
            Assert.Equal(cautions.Distinct(), cautions);
            var said = await page.Locator("main").InnerTextAsync();
            Assert.DoesNotMatch("likely|not enough|of ten tries|To mind", said);
            Assert.Matches("probablemente|faltan intentos", said);
        }
    }

    [Fact]
    public async Task Level_ThatTheClassDoesNotHave_SaysWhereToGo()
    {
        await using var served = await ServedHost.StartAsync();
        var page = await served.Client.GetStringAsync($"{await ClassAsync(served)}/levels/{Guid.NewGuid()}", TestContext.Current.CancellationToken);
        Assert.Contains("This class has no such level", page);
    }

    private static async Task FollowAsync(IPage page, string link)
    {
        await page.Locator(link).First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task<string[]> PagesAsync(ServedHost served)
    {
        var evidence = await served.Client.GetStringAsync(await ClassAsync(served) + "/evidence", TestContext.Current.CancellationToken);
        // The third level of the first task, and the sixth of all, which comes from another lesson.
        var levels = LevelLink().Matches(evidence).Select(m => m.Value).Distinct().ToList();
        return [levels[2], levels[5], PupilLink().Match(evidence).Value];
    }

    private static async Task<string> ClassAsync(ServedHost served) =>
        ClassLink().Match(await served.Client.GetStringAsync("/classes", TestContext.Current.CancellationToken)).Value;

    [GeneratedRegex("/classes/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex ClassLink();

    [GeneratedRegex("/classes/[0-9a-f]{8}-[0-9a-f-]{27}/levels/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex LevelLink();

    [GeneratedRegex("/pupils/[0-9a-f]{8}-[0-9a-f-]{27}/evidence")]
    private static partial Regex PupilLink();
}
