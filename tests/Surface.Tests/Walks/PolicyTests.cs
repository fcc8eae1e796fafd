using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class PolicyTests(Browser browser)
{
    [Fact]
    public async Task Walk_PolicyRestrictionReturnAndAdaptation_EndsOnThePupilsSheetOnly()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await using var served = await ServedHost.StartAsync();
        ILocator Press(string name) => page.GetByRole(AriaRole.Button, new() { Name = name });

        // A policy that allows nothing is said to be so, and what was typed stays.
        await page.GotoAsync(new Uri(served.Address, "/settings").ToString());
        await page.Locator("input[name=HeadWeight][value=Planned]").CheckAsync();
        foreach (var condition in new[] { "MatsAround", "StepsBefore", "TeacherBeside", "HandsCarry" }) await page.Locator($"input[name=Conditions][value={condition}]").UncheckAsync();
        await page.Locator("#HoldCap").FillAsync("5 s");
        await page.Locator("#ReturnRoll").FillAsync("366");
        await page.Locator("#EmergencyNotes").FillAsync("Box by the stage door.\nDial 112.");
        await Press("Save the policy").ClickAsync();
        await page.Locator("#conditions-finding").WaitForAsync();
        Assert.Equal("5 s", await page.Locator("#HoldCap").InputValueAsync());
        Assert.Equal("366", await page.Locator("#ReturnRoll").InputValueAsync());
        Assert.Equal("Box by the stage door.\nDial 112.", await page.Locator("#EmergencyNotes").InputValueAsync());
        Assert.True(await page.Locator("input[name=HeadWeight][value=Planned]").IsCheckedAsync());
        Assert.Equal(1, await page.Locator("#HoldCap-finding").CountAsync());
        Assert.Equal(1, await page.Locator("#ReturnRoll-finding").CountAsync());
        await SeriousOnAsync(page, "settings with findings");
        await page.Locator("input[name=Conditions][value=MatsAround]").CheckAsync();
        await page.Locator("#HoldCap").FillAsync("4");
        await page.Locator("#ReturnRoll").FillAsync("28");
        await page.Locator("#ReturnImpact").FillAsync("");
        await Press("Save the policy").ClickAsync();
        await page.WaitForURLAsync(url => url.Contains("saved=policy", StringComparison.Ordinal));
        Assert.Equal("4", await page.Locator("#HoldCap").InputValueAsync());
        Assert.Equal("Box by the stage door.\nDial 112.", await page.Locator("#EmergencyNotes").InputValueAsync());

        // A return makes a gate a step: inversion, head weight and rolls, and no question why.
        await page.GotoAsync(new Uri(served.Address, "/classes").ToString());
        await page.GetByRole(AriaRole.Link, new() { Name = "7 Heron", Exact = true }).First.ClickAsync();
        await page.Locator("#pupils tbody tr").First.WaitForAsync();
        var pupil = await page.Locator("#pupils tbody tr td").First.InnerTextAsync();
        await page.Locator("fieldset.live:enabled #pupils tbody tr").First.GetByRole(AriaRole.Button).ClickAsync();
        var editor = page.Locator(".row-open");
        await Press("Start a return after a pause").ClickAsync();
        await Press("Add the steps").ClickAsync();
        var gates = editor.Locator(".list > li", new() { HasText = "lifted by hand" });
        await Assertions.Expect(gates).ToHaveCountAsync(3);
        await Assertions.Expect(gates.First).ToContainTextAsync("not before");
        // Before its day a gate is lifted only once that was read.
        await gates.First.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(editor).ToContainTextAsync("Its day has not come");
        await Press("Lift it now").ClickAsync();
        await Assertions.Expect(gates).ToHaveCountAsync(2);

        // An idea of the library, taken over and made shorter; it stands on this pupil's sheet.
        await editor.Locator("select[id^=adapted]").SelectOptionAsync(new SelectOptionValue { Label = "One-foot balance" });
        await editor.Locator(".ideas button").First.ClickAsync();
        await Assertions.Expect(editor.Locator("input[id^=how]")).Not.ToHaveValueAsync("");
        await editor.Locator("input[id^=how]").FillAsync("One hand on the wall");
        await SeriousOnAsync(page, "the open pupil");
        await Press("Keep it").ClickAsync();
        await Assertions.Expect(editor.Locator(".list > li", new() { HasText = "One hand on the wall" })).ToHaveCountAsync(1);

        await page.GotoAsync(new Uri(served.Address, "/lessons").ToString());
        await page.Locator("a[href^='/lessons/']", new() { HasText = "7 Heron" }).First.WaitForAsync();
        foreach (var lesson in (await page.Locator("a[href^='/lessons/']").EvaluateAllAsync<string[]>("all => all.map(a => a.getAttribute('href'))")).Where(a => Guid.TryParse(a.Split('/')[^1], out _)).Distinct())
        {
            await page.GotoAsync(new Uri(served.Address, $"{lesson}/sheet").ToString());
            var shown = await page.Locator(".sheet-page", new() { HasText = "One hand on the wall" }).AllInnerTextsAsync();
            if (shown.Count == 0) continue;
            Assert.Contains(pupil, Assert.Single(shown), StringComparison.Ordinal);
            return;
        }
        Assert.Fail("No prepared lesson has the task of the adaptation.");
    }

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}:\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        if (Environment.GetEnvironmentVariable("POLICY_SHOTS") is { } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, where.Replace(' ', '-') + ".png"), FullPage = true });
    }
}
