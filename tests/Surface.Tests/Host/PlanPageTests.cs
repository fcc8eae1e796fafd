using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class PlanPageTests(Browser browser)
{
    [Theory]
    [InlineData(1280, false)]
    [InlineData(360, true)]
    [InlineData(320, false)]
    public async Task Plan_OnALargeAndASmallScreen_HasNothingSeriousForAxeAndFits(int widthPx, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, await PlanAsync(served)).ToString());
        Assert.Equal(4, await page.Locator(".plan-four li").CountAsync());
        // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px.
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx);
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        // What the picture shows is there for those who do not see it.
        Assert.Matches("from minute [0-9]+ to [0-9]+[^§]*the last one is done after [0-9]+ min", await page.Locator(".scene svg").First.InnerHTMLAsync());
    }

    [Fact]
    public async Task Plan_WithOtherMatsByKeyboard_KeepsThemOnlyByAPress()
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        var address = await PlanAsync(served);
        await page.GotoAsync(new Uri(served.Address, address).ToString());
        var planned = await page.Locator(".plan-four").InnerTextAsync();
        async Task TryAsync()
        {
            await page.Locator("#mats").FillAsync("4");
            await page.Keyboard.PressAsync("Enter");
            await page.WaitForURLAsync(url => url.Contains("mats=4"));
        }
        await TryAsync();
        var tried = await page.Locator(".plan-four").InnerTextAsync();
        Assert.NotEqual(planned, tried);
        Assert.Contains("4 mats", await page.Locator("#grounds").InnerTextAsync());
        await page.GotoAsync(new Uri(served.Address, address).ToString());
        Assert.Equal(planned, await page.Locator(".plan-four").InnerTextAsync());

        await TryAsync();
        await page.Locator(".plan-kept button.main").ClickAsync();
        await page.Locator("[data-kept='true']").WaitForAsync();
        await page.GotoAsync(new Uri(served.Address, address).ToString());
        Assert.Equal(tried, await page.Locator(".plan-four").InnerTextAsync());
        Assert.Equal("Kept for this lesson: mats: 4.", await page.Locator("[data-kept]").InnerTextAsync());
        // The usual can be looked at beside it, and taken again.
        await page.GotoAsync(new Uri(served.Address, address + "?try=1").ToString());
        Assert.Equal(planned, await page.Locator(".plan-four").InnerTextAsync());
        await page.Locator(".plan-kept form").Last.Locator("button").ClickAsync();
        await page.Locator(".plan-kept").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(planned, await page.Locator(".plan-four").InnerTextAsync());
    }

    [Fact]
    public async Task Plan_WithANumberOutsideItsRange_SaysSoAndShowsThePlan()
    {
        await using var served = await ServedHost.StartAsync();
        var plan = await PlanAsync(served);
        foreach (var query in (string[])["mats=0", "mats=many", "rest=601", "pupils-a-mat=31", "performers=5", "action=0", "talk=-1", "writer=nobody"])
        {
            var page = await served.Client.GetStringAsync($"{plan}?{query}", TestContext.Current.CancellationToken);
            Assert.Contains("outside its range", page);
            Assert.Contains("plan-four", page);
        }
    }

    [Fact]
    public async Task Plan_InSpanish_SaysNoEnglish()
    {
        var page = await browser.NewPageAsync(new() { Locale = "es-ES" });
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, await PlanAsync(served)).ToString());
        // Names and notes are the demo school's own, in English.
        var said = string.Join('\n', await page.Locator(".plan-four, .plan-asks, .plan-shares, .scene figcaption, #line p, #changes, #grounds").AllInnerTextsAsync());
        Assert.Contains("sesiones simuladas", said);
        Assert.DoesNotMatch(@"\b(tries|mats|waiting|lesson|planned)\b", said);
    }

    [Fact]
    public async Task Lesson_OfTheDemo_LeadsToItsPlan()
    {
        await using var served = await ServedHost.StartAsync();
        var plan = await PlanAsync(served);
        Assert.Contains($"href=\"{plan}\"", await served.Client.GetStringAsync(plan[..^"/plan".Length], TestContext.Current.CancellationToken));
    }

    private static async Task<string> PlanAsync(ServedHost served) =>
        LessonLink().Match(await served.Client.GetStringAsync("/lessons", TestContext.Current.CancellationToken)).Value + "/plan";

    [GeneratedRegex("/lessons/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex LessonLink();
}
