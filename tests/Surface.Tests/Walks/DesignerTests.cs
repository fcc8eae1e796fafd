using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class DesignerTests(Browser browser)
{
    [Fact]
    public async Task Design_TaskOfTheLibrary_IsSavedWithItsNewLevelsAndCanBePutOnASheet()
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB", ViewportSize = new() { Width = 1440, Height = 900 } });
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/tasks/design/new").ToString());
        await page.Locator("#from").SelectOptionAsync("kneeling-balance");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start from it" }).ClickAsync();
        await page.Locator("fieldset.live:not([disabled]) #take-all, fieldset.live:not([disabled]) .ladder").First.WaitForAsync();

        // Only the key factor, all four of its values.
        await page.GetByRole(AriaRole.Radio, new() { Name = "Classical: only" }).CheckAsync();
        await page.Locator("#ladder-count").SelectOptionAsync("4");
        await page.Locator(".ladder tbody tr:nth-child(4):last-child").WaitForAsync();
        // A value of our own: nobody has said what it asks, so it waits.
        var values = page.Locator("#base-values");
        await values.FillAsync(await values.InputValueAsync() + "\none knee on a cushion");
        await values.BlurAsync();
        await page.Locator("#ladder-count").SelectOptionAsync("5");
        await page.Locator(".ladder tbody tr:nth-child(5):last-child").WaitForAsync();
        var last = page.Locator(".ladder tr[data-level='5']");
        await page.Locator(".ladder tr[data-level='5'][data-open]").WaitForAsync();
        await NothingSeriousAsync(page, "with a level that is not known");
        await last.GetByLabel("nothing of these").CheckAsync();
        await page.Locator(".ladder tr[data-level='5']:not([data-open])").WaitForAsync();
        await page.Locator("#take-all").ClickAsync();
        await page.Locator(".kept-levels > li:nth-child(5):last-child").WaitForAsync();
        await page.Locator("#undo").ClickAsync();
        await page.Locator("#take-all").WaitForAsync();
        await page.Locator("#take-all").ClickAsync();
        await page.Locator(".kept-levels > li:nth-child(5):last-child").WaitForAsync();
        await page.Locator("#save-design button[type=submit]").ClickAsync();
        await page.WaitForURLAsync("**/tasks/*/design");
        await page.Locator("#save-design [role=status]:has-text('Saved')").WaitForAsync();

        // On a narrow screen each level is a card, and nothing runs out of the page.
        await page.SetViewportSizeAsync(320, 900);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "The page scrolls sideways.");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await NothingSeriousAsync(page, "narrow and dark");

        await page.SetViewportSizeAsync(1440, 900);
        await page.GotoAsync(new Uri(served.Address, "/sheets/new").ToString());
        await page.Locator("fieldset.live:not([disabled])").First.WaitForAsync();
        await page.Locator("#add-task").SelectOptionAsync(new SelectOptionValue { Label = "Kneeling balance" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await page.Locator("form fieldset.group li:nth-child(5):last-child:has-text('One knee on a cushion')").WaitForAsync();
    }

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task NothingSeriousAsync(IPage page, string when)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{when}: " + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
