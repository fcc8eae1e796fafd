using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed partial class GroupsTests(Browser browser)
{
    private static readonly float PatienceMs = (float)HostProgram.Patience.TotalMilliseconds;

    [Fact]
    public async Task Groups_MadeDraggedFixedAndMadeAnew_AreThereAfterAReload()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(PatienceMs);
        await using var served = await ServedHost.StartAsync();
        var lesson = LessonLink().Match(await served.Client.GetStringAsync("/lessons", TestContext.Current.CancellationToken)).Value;
        await page.GotoAsync(new Uri(served.Address, lesson + "/groups").ToString());
        await LiveAsync(page);

        await page.Locator("#size").FillAsync("5");
        await page.Locator("#size").BlurAsync();
        await page.Locator("#make").ClickAsync();
        var groups = page.Locator("#groups");
        await Assertions.Expect(groups).ToHaveAttributeAsync("data-count", "6", new() { Timeout = PatienceMs });

        // By mouse, from the first group to the second.
        var dragged = (await page.Locator("[data-group='1'] [data-pupil]").First.GetAttributeAsync("data-pupil"))!;
        await page.Locator($"[data-pupil='{dragged}'] .who").DragToAsync(page.Locator("[data-group='2'] h3"));
        await InGroupAsync(page, dragged, 2);
        await page.Locator($"[data-pupil='{dragged}'] .lock").ClickAsync();
        await Assertions.Expect(page.Locator($"[data-pupil='{dragged}'] .lock")).ToHaveAttributeAsync("aria-pressed", "true", new() { Timeout = PatienceMs });

        // By keyboard, and back.
        var moved = (await page.Locator("[data-group='1'] [data-pupil]").First.GetAttributeAsync("data-pupil"))!;
        await page.Locator($"[data-pupil='{moved}'] .who").FocusAsync();
        await page.Keyboard.PressAsync("3");
        await InGroupAsync(page, moved, 3);
        await Assertions.Expect(page.Locator($"[data-pupil='{moved}'] .who")).ToBeFocusedAsync(new() { Timeout = PatienceMs });
        await page.Keyboard.PressAsync("Control+z");
        await InGroupAsync(page, moved, 1);

        // What is said of pupils, a key each.
        await page.Locator("[data-known] input[type='radio']:checked").First.FocusAsync();
        foreach (var key in (string[])["3", "1", "s"]) await page.Keyboard.PressAsync(key);
        await Assertions.Expect(page.Locator("[data-known]").Nth(0).Locator("input[value='3']")).ToBeCheckedAsync(new() { Timeout = PatienceMs });
        await Assertions.Expect(page.Locator("[data-known]").Nth(1).Locator("input[value='1']")).ToBeCheckedAsync(new() { Timeout = PatienceMs });
        await Assertions.Expect(page.Locator("[data-known]").Nth(2).Locator("input[type='checkbox']")).ToBeCheckedAsync(new() { Timeout = PatienceMs });

        var seed = await page.Locator("#seed").InputValueAsync();
        await page.Locator("#other").ClickAsync();
        await Assertions.Expect(page.Locator("#seed")).Not.ToHaveValueAsync(seed, new() { Timeout = PatienceMs });
        await InGroupAsync(page, dragged, 2);
        await Assertions.Expect(groups).ToHaveAttributeAsync("data-saved", "saved", new() { Timeout = PatienceMs });

        var shown = await ShownAsync(page);
        await page.Locator("[data-group='2'] .who").First.ClickAsync();
        await page.Locator(".group-moves").WaitForAsync();
        await HasNothingSeriousAsync(page);
        // Printed from the browser it says nothing of what was said and wished either.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await page.Locator("[data-group='2'] .who").First.IsVisibleAsync());
        foreach (var hidden in (string[])["#known", "#wishes", "#mixing", ".lock", ".groups-asks"]) Assert.False(await page.Locator(hidden).First.IsVisibleAsync(), hidden);
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await HasNothingSeriousAsync(page);
        await page.ReloadAsync();
        await LiveAsync(page);
        Assert.Equal(shown, await ShownAsync(page));
        await Assertions.Expect(page.Locator($"[data-pupil='{dragged}'] .lock")).ToHaveAttributeAsync("aria-pressed", "true", new() { Timeout = PatienceMs });
        await Assertions.Expect(page.Locator("[data-known]").Nth(0).Locator("input[value='3']")).ToBeCheckedAsync(new() { Timeout = PatienceMs });

        await page.SetViewportSizeAsync(320, 800);
        // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px.
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "The page scrolls sideways.");
        await page.GotoAsync(new Uri(served.Address, lesson + "/groups/list").ToString());
        Assert.Equal(6, await page.Locator(".group-wall > li").CountAsync());
        await HasNothingSeriousAsync(page);
        var pdf = await served.Client.GetByteArrayAsync($"/print{lesson}/groups.pdf", TestContext.Current.CancellationToken);
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
    }

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task HasNothingSeriousAsync(IPage page)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }

    private static Task LiveAsync(IPage page) => page.Locator("#groups[data-live]").WaitForAsync();

    private static Task InGroupAsync(IPage page, string pupil, int group) => page.Locator($"[data-group='{group}'] [data-pupil='{pupil}']").WaitForAsync();

    private static Task<string> ShownAsync(IPage page) => page.EvaluateAsync<string>(
        "[...document.querySelectorAll('[data-group]')].map(g => [...g.querySelectorAll('[data-pupil]')].map(p => p.dataset.pupil).join(' ')).join(' | ')");

    [GeneratedRegex("/lessons/[0-9a-f]{8}-[0-9a-f-]{27}")]
    private static partial Regex LessonLink();
}
