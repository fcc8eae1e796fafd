using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed partial class SafetyTests(Browser browser)
{
    private static readonly float Patience = (float)HostProgram.Patience.TotalMilliseconds;

    [Theory]
    [InlineData(1280, false)]
    [InlineData(320, true)]
    public async Task Risk_WrittenAndLoggedByKeyboard_IsKeptAndComesBackWithTheSameTask(int widthPx, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        page.SetDefaultTimeout(Patience);
        await using var served = await ServedHost.StartAsync();
        var risk = new Uri(served.Address, await RiskAsync(served)).ToString();
        await page.GotoAsync(risk);
        var form = page.Locator("#risk-form");
        await page.Locator("fieldset.live:not([disabled])").WaitForAsync();
        await CheckAsync(page, widthPx);

        // A level and a line of the teacher's own, then one line too many characters cannot even be typed.
        await page.Locator("#task-1 input[type=radio]").Nth(2).CheckAsync();
        await page.Locator("#task-1").GetByRole(AriaRole.Button, new() { Name = "Write it your way" }).PressAsync("Enter");
        await page.Locator("#task-1 .risk-lines input").First.FillAsync("Wall bars are locked.");
        await page.Locator("#task-1 .risk-lines input").First.PressAsync("Tab");
        await Assertions.Expect(form).ToHaveAttributeAsync("data-state", "dirty", new() { Timeout = Patience });
        await Assertions.Expect(page.Locator("#printed")).ToContainTextAsync("Wall bars are locked.", new() { Timeout = Patience });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).PressAsync("Enter");
        await Assertions.Expect(form).ToHaveAttributeAsync("data-state", "saved", new() { Timeout = Patience });
        await page.GotoAsync(risk);
        await Assertions.Expect(page.Locator("#task-1 .risk-lines input").First).ToHaveValueAsync("Wall bars are locked.", new() { Timeout = Patience });
        Assert.Contains("The working rule proposes", await page.Locator("#printed").InnerTextAsync());

        // The log, from the lesson: refused while it says nothing, and what was typed stays.
        await page.GetByRole(AriaRole.Link, new() { Name = "Log an incident or near miss" }).ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/safety/new?lesson="));
        await page.Locator("fieldset.live:not([disabled])").WaitForAsync();
        await page.Locator("#place").FillAsync("mat 3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).PressAsync("Enter");
        await page.Locator(".findings").WaitForAsync();
        Assert.Equal("mat 3", await page.Locator("#place").InputValueAsync());
        Assert.NotEqual("", await page.Locator("#lesson").InputValueAsync());
        await CheckAsync(page, widthPx);
        await page.Locator("input[name=kind][value=NearMiss]").CheckAsync();
        await page.Locator("#happened").FillAsync("Two on one mat.");
        await page.Locator("#changed").FillAsync("One mat each.");
        await page.Locator("#task").SelectOptionAsync(new SelectOptionValue { Label = "Frog balance" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).PressAsync("Enter");
        await page.WaitForURLAsync(url => Entry().IsMatch(url));
        await CheckAsync(page, widthPx);

        await page.GotoAsync(risk);
        Assert.Contains("Two on one mat.", await page.Locator("#task-1 .risk-earlier").InnerTextAsync());
        Assert.Contains("Since then: One mat each.", await page.Locator("#printed").InnerTextAsync());

        // Removing asks first.
        await page.GotoAsync(new Uri(served.Address, "/safety?kind=NearMiss").ToString());
        await CheckAsync(page, widthPx);
        Assert.Equal("2 of 2 entries", await page.Locator(".safety-count").InnerTextAsync());
        await page.Locator("#log .list a").First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Change" }).ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/edit", StringComparison.Ordinal));
        await page.Locator("fieldset.live:not([disabled])").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove this entry" }).PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove it for good" }).PressAsync("Enter");
        await page.WaitForURLAsync(url => url.EndsWith("/safety", StringComparison.Ordinal));
        Assert.DoesNotContain("Two on one mat.", await page.Locator("#log").InnerTextAsync());
    }

    [Fact]
    public async Task Table_OfTheLog_IsAFileWithThePagesFilter()
    {
        await using var served = await ServedHost.StartAsync();
        var answer = await served.Client.GetAsync("/tables/incidents.csv", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        var all = Encoding.UTF8.GetString((await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken))[3..]);
        Assert.StartsWith("day,time,kind,class,lesson,task,place,happened,done,changed,pupils", all);
        Assert.Contains("NearMiss,7 Heron,Rope and target,Target throw,far wall,", all);
        var none = await served.Client.GetStringAsync("/tables/incidents.csv?kind=Incident", TestContext.Current.CancellationToken);
        Assert.DoesNotContain("far wall", none);
    }

    [Fact]
    public async Task Pages_InSpanish_SayNoEnglish()
    {
        var page = await browser.NewPageAsync(new() { Locale = "es-ES" });
        page.SetDefaultTimeout(Patience);
        await using var served = await ServedHost.StartAsync();
        // Names, cautions and the log are the demo school's own, in English.
        await page.GotoAsync(new Uri(served.Address, await RiskAsync(served)).ToString());
        await page.EvaluateAsync("document.querySelectorAll('h1, h2, h3, .above, .risk-earlier, .risk-caution, .risk-print, strong, .brand-school, section ul ~ ul').forEach(e => { if (/Frog|Target|Mind|Cuidado|Somebody|Pellinmoor/.test(e.textContent)) e.remove() })");
        var said = string.Join('\n', await page.Locator(".risk-task, .risk-sheet, #people, #own-notes").AllInnerTextsAsync());
        Assert.Contains("Nivel de riesgo", said);
        Assert.DoesNotMatch(@"\b(level|proposed|mats|signed|restrictions|lesson)\b", said);
        await page.GotoAsync(new Uri(served.Address, "/safety/new").ToString());
        Assert.DoesNotMatch(@"\b(happened|optional|lesson|pupils|near miss)\b", await page.Locator("#incident-form .group, #incident-form label, #incident-form .hint").AllInnerTextsAsync() is var texts ? string.Join('\n', texts) : "");
    }

    private static async Task CheckAsync(IPage page, int widthPx)
    {
        // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px; the rest as axe-core checks it.
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx, $"{page.Url} scrolls sideways.");
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, page.Url + "\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }

    // The lesson of the demo that is due next: a frog balance, and throwing.
    private static async Task<string> RiskAsync(ServedHost served) =>
        LessonLink().Match(await served.Client.GetStringAsync("/lessons", TestContext.Current.CancellationToken)).Value + "/risk";

    [GeneratedRegex("/lessons/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex LessonLink();

    [GeneratedRegex("/safety/[0-9a-f]{8}-[0-9a-f-]{27}$")]
    private static partial Regex Entry();
}
