using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class UnitWalkTests(Browser browser)
{
    [Fact]
    public async Task Walk_MakeImportTickSaveCopy_EndsInAUnitOfItsOwn()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/units").ToString());
        await page.Locator("#UnitName").FillAsync("Walked through");
        await page.Locator("#UnitClass").SelectOptionAsync(new SelectOptionValue { Label = "7 Kestrel" });
        await page.Locator("#UnitDay").FillAsync("2027-03-08");
        await page.Locator("#new-unit button").ClickAsync();
        // Pages are drawn into the one that is open: a load of their own may never come.
        await page.WaitForURLAsync(url => url.Contains("/units/"), new() { WaitUntil = WaitUntilState.Commit });
        var first = page.Url;

        // Two lessons with a task each.
        foreach (var (index, task) in new[] { (0, "One-foot balance"), (1, "Rope jumping") })
        {
            await page.Locator("#add-lesson:enabled").ClickAsync();
            await page.Locator($"#lesson-{index}-title").FillAsync($"Day {index + 1}");
            await page.Locator($"#lesson-{index}-task").SelectOptionAsync(new SelectOptionValue { Label = task });
        }

        // A table without a licence: only codes are kept unless the teacher says otherwise, and she does for none.
        await page.Locator("#outcome-file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes("code;text;framework\nB1;Holds a shape;Invented\nB2;Keeps a beat;Invented\n;Has no code;Invented\n"),
        });
        await page.Locator("[data-import=read]").WaitForAsync();
        Assert.True(await page.Locator("#only-codes").IsCheckedAsync());
        var boxes = page.Locator(".import-table input[type=checkbox]");
        Assert.Equal(3, await boxes.CountAsync());
        Assert.True(await boxes.Nth(2).IsDisabledAsync());
        await boxes.Nth(0).CheckAsync();
        await boxes.Nth(1).CheckAsync();
        await SeriousOnAsync(page, "the import");
        await page.Locator("#take-outcomes").ClickAsync();
        await page.Locator("#outcome-1-code").WaitForAsync();
        Assert.Equal(("B2", ""), (await page.Locator("#outcome-1-code").InputValueAsync(), await page.Locator("#outcome-1-text").InputValueAsync()));

        // Tick one pair by keyboard, save, and the gap is named.
        await page.Locator("#works-1-1-1").FocusAsync();
        await page.Keyboard.PressAsync("Space");
        await page.Locator(".save-line button[type=submit]").ClickAsync();
        await page.Locator("#unit-form[data-state=saved]").WaitForAsync();
        Assert.Contains("1 outcome is in no lesson. B2", await page.Locator("#coverage").InnerTextAsync());
        await SeriousOnAsync(page, "the unit");

        // Both lessons into the calendar, on Thursdays.
        await page.Locator("#calendar-weekday").SelectOptionAsync("Thursday");
        await page.Locator("#fill-calendar").ClickAsync();
        await page.Locator("#calendar").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(2, await page.Locator("#sequence a[href^='/lessons/']").CountAsync());
        Assert.Contains("18 March", await page.Locator("#sequence").InnerTextAsync());

        // For the other class, next year: the plan comes along, the calendar does not.
        await page.Locator("#copy-name").FillAsync("Walked again");
        await page.Locator("#copy-class").SelectOptionAsync(new SelectOptionValue { Label = "7 Heron" });
        await page.Locator("#copy-unit").ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("/units/") && url != first, new() { WaitUntil = WaitUntilState.Commit });
        await page.Locator("h1", new() { HasTextString = "Walked again" }).WaitForAsync();
        await page.Locator("#works-1-1-1:enabled").WaitForAsync();
        Assert.True(await page.Locator("#works-1-1-1").IsCheckedAsync());
        Assert.Equal(0, await page.Locator("#sequence a[href^='/lessons/']").CountAsync());

        // Removing asks first.
        await page.Locator("#remove-unit").ClickAsync();
        await page.Locator("#remove-sure").ClickAsync();
        await page.WaitForURLAsync(url => url.EndsWith("/units", StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.Commit });
        await page.Locator("#new-unit").WaitForAsync();
        Assert.Equal(0, await page.Locator("a", new() { HasTextString = "Walked again" }).CountAsync());
        var csv = await served.Client.GetStringAsync("/tables" + new Uri(first).AbsolutePath + "/coverage.csv", TestContext.Current.CancellationToken);
        Assert.Contains("B1,,Invented,1,Day 1,2027-03-11,1,0,0", csv);
    }

    // Source: [WCAG22] as axe-core checks it; 1.4.10, no scrolling in two directions at 320 px.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}: " + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        await page.SetViewportSizeAsync(320, 800);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 320, $"{where} is wider than 320 px.");
        await page.SetViewportSizeAsync(1280, 800);
    }
}
