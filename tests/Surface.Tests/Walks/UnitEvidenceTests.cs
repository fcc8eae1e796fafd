using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed partial class UnitEvidenceTests(Browser browser)
{
    [Theory]
    [InlineData(1440, false, "en-GB")]
    [InlineData(320, true, "es-ES")]
    public async Task Pages_WithAllOpen_FitAndHaveNothingSeriousForAxe(int widthPx, bool isDark, string locale)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = locale, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        await using var served = await ServedHost.StartAsync();
        foreach (var (address, parts) in new[]
        {
            (await UnitAsync(served), new[] { "#lessons", "#ask", "#talks", "#order", "#growth", "#decisions", "#debrief" }),
            (await LessonAsync(served), ["#in-short", "#ask", "#levels", "#for-debrief", "#readings", "#lesson-talks", "#by-pupil"]),
        })
        {
            await page.GotoAsync(new Uri(served.Address, address).ToString());
            foreach (var part in parts) await page.Locator(part).WaitForAsync();
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");
            // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px; wide tables scroll inside the page.
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx, $"{address} scrolls sideways.");
            var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
            Assert.True(serious.Count == 0, $"{address}\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        }
    }

    [Fact]
    public async Task Lesson_ByKeysAndOnPaper_ItsPartsOpen()
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, await LessonAsync(served)).ToString());
        var table = page.Locator("table.pupil-evidence");
        Assert.False(await table.IsVisibleAsync());

        await page.Locator("#by-pupil > summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await table.WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        await table.WaitForAsync(new() { State = WaitForSelectorState.Hidden });

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        // What a closed part hides it also leaves without a layout, until the next frame.
        foreach (var shown in new[] { "table.pupil-evidence", "#debrief" })
            await page.WaitForFunctionAsync("shown => document.querySelector(shown).getBoundingClientRect().height > 100 && document.querySelector(shown).checkVisibility({ contentVisibilityAuto: true })", shown);
        Assert.False(await page.Locator("#by-pupil > summary").IsVisibleAsync());
    }

    [Fact]
    public async Task Numbers_OfUnitAndLesson_LeadToTheirEntries()
    {
        await using var served = await ServedHost.StartAsync();
        foreach (var address in new[] { await UnitAsync(served), await LessonAsync(served) })
        {
            var page = await served.Client.GetStringAsync(address, TestContext.Current.CancellationToken);
            var links = PartLink().Matches(page).Select(m => m.Groups[1].Value).Distinct().ToList();
            Assert.Contains(links, l => l.Contains("of=Moves-", StringComparison.Ordinal));
            Assert.Contains(links, l => l.Contains("of=Pattern-", StringComparison.Ordinal));
            foreach (var link in links)
            {
                var entries = await served.Client.GetStringAsync(link, TestContext.Current.CancellationToken);
                Assert.True(entries.Contains("class=\"entries\"", StringComparison.Ordinal), $"{link} leads to no entry.");
            }
        }
    }

    [Fact]
    public async Task Moves_OfAUnit_AreAsManyAsItsTableSays()
    {
        await using var served = await ServedHost.StartAsync();
        var unit = await UnitAsync(served);
        var page = await served.Client.GetStringAsync(unit, TestContext.Current.CancellationToken);
        var lines = (await served.Client.GetStringAsync($"/tables{unit[..unit.LastIndexOf('/')]}/lessons.csv", TestContext.Current.CancellationToken)).Split('\n');
        var headings = lines[0].Trim('\r', '\uFEFF').Split(',').ToList();
        var first = lines[1].Split(',');
        Assert.Equal(8, headings.IndexOf("predicted_sets"));
        Assert.Contains($"{first[headings.IndexOf("pupils_compared")]} pupils with two sets or more", page);
        Assert.True(int.Parse(first[headings.IndexOf("pupils_compared")], CultureInfo.InvariantCulture) > 0);
    }

    [Fact]
    public async Task Class_WithoutAnyTry_SaysThatReachRestsOnOrderAndAssumptionsAlone()
    {
        using var folder = new TempFolder();
        var data = folder.At("data");
        Assert.Equal(0, (await HostProgram.RunAsync("demo", "load", "--data", data)).ExitCode);
        Assert.Equal(0, (await HostProgram.RunAsync("import", "roster", folder.Write("new.csv", "name,class,code\nAda,8 Curlew,A2B\nBen,8 Curlew,B2C\nCem,8 Curlew,C2D\n"), "--data", data)).ExitCode);
        await using var served = await ServedHost.StartAsync(isDemo: false, folder: data);
        var page = await browser.NewPageAsync(new() { Locale = "en-GB" });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await page.GotoAsync(new Uri(served.Address, "/sheets").ToString());
        var sheet = await page.Locator("main a[href^='/sheets/0']").First.GetAttributeAsync("href");
        await page.GotoAsync(new Uri(served.Address, sheet).ToString());
        await page.Locator(".reach-head").First.WaitForAsync();
        await page.Locator("#reach-class").SelectOptionAsync(new SelectOptionValue { Label = "8 Curlew" });
        await page.Locator(".reach-head", new() { HasText = "rests on your order of the levels and on wide assumptions alone" }).First.WaitForAsync();
        Assert.Contains("Behind it: 0 tries", await page.Locator(".reach-grounds").TextContentAsync());
        foreach (var name in new[] { "Ada", "Ben", "Cem" })
            Assert.DoesNotContain(name, string.Concat(await page.Locator(".reach-head, .reach-notes").AllTextContentsAsync()));

        var classes = await served.Client.GetStringAsync("/classes", TestContext.Current.CancellationToken);
        var curlew = CurlewLink().Match(classes).Groups[1].Value;
        Assert.Contains("No lesson of this class has results yet", await served.Client.GetStringAsync(curlew + "/evidence", TestContext.Current.CancellationToken));
    }

    private static async Task<string> UnitAsync(ServedHost served) =>
        ClassLink().Match(await served.Client.GetStringAsync("/classes", TestContext.Current.CancellationToken)).Value + "/evidence";

    private static async Task<string> LessonAsync(ServedHost served) =>
        LessonLink().Match(await served.Client.GetStringAsync(await UnitAsync(served), TestContext.Current.CancellationToken)).Value;

    [GeneratedRegex("/classes/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex ClassLink();

    [GeneratedRegex("/lessons/[0-9a-f]{8}-[0-9a-f-]{27}/evidence")]
    private static partial Regex LessonLink();

    [GeneratedRegex("href=\"([^\"]+/entries\\?of=[^\"]+)\"")]
    private static partial Regex PartLink();

    [GeneratedRegex("href=\"(/classes/[^\"]+)\">8 Curlew")]
    private static partial Regex CurlewLink();
}
