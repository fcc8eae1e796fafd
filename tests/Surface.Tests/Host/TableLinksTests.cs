using System.Net;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class TableLinksTests(Browser browser)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Evidence_OfAClassAndALesson_LeadsToTablesThatOpenInASpreadsheet(bool isLesson)
    {
        await using var served = await ServedHost.StartAsync();
        var page = await served.Client.GetStringAsync(await ReadingsAsync(served), TestContext.Current.CancellationToken);
        if (isLesson)
        {
            var unit = await served.Client.GetStringAsync((await ReadingsAsync(served)).Replace("/readings", "/evidence", StringComparison.Ordinal), TestContext.Current.CancellationToken);
            page = await served.Client.GetStringAsync(LessonLink().Match(unit).Value, TestContext.Current.CancellationToken);
        }
        var links = TableLink().Matches(page).Select(m => m.Groups[1].Value).ToList();
        Assert.True(links.Count >= (isLesson ? 13 : 15), $"Only {links.Count} tables are linked.");
        foreach (var link in links)
        {
            var answer = await served.Client.GetAsync(link, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
            Assert.True(answer.Headers.CacheControl!.NoStore);
            var bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
            Assert.True(bytes.Count(b => b == '\n') > 1, $"{link} holds no row.");
        }
        var missing = await served.Client.GetAsync(links[0].Replace("lessons.csv", "grades.csv", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
    }

    [Theory]
    [InlineData(1440, false)]
    [InlineData(320, true)]
    public async Task Readings_OnALargeAndASmallScreen_HaveNothingSeriousForAxeAndFit(int widthPx, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = "en-GB", ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, await ReadingsAsync(served)).ToString());
        foreach (var section in new[] { "#self-checks", "#predictions", "#holds" }) await page.Locator(section).WaitForAsync();
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
        // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px; wide tables scroll inside the page.
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx);
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }

    private static async Task<string> ReadingsAsync(ServedHost served)
    {
        var classes = await served.Client.GetStringAsync("/classes", TestContext.Current.CancellationToken);
        return ClassLink().Match(classes).Value + "/readings";
    }

    [GeneratedRegex("/classes/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex ClassLink();

    [GeneratedRegex("/lessons/[0-9a-f]{8}-[0-9a-f-]{27}/evidence")]
    private static partial Regex LessonLink();

    [GeneratedRegex("href=\"(/tables/[^\"]+)\"")]
    private static partial Regex TableLink();
}
