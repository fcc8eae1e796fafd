using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Surface.Tests.Host;

public sealed class LibraryPagesTests(Browser browser)
{
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task Task_EachOfTheLibrary_IsThereWithAllItsWords(string language)
    {
        await using var served = await ServedHost.StartAsync();
        var cancel = TestContext.Current.CancellationToken;
        var list = WebUtility.HtmlDecode(await served.Client.GetStringAsync($"/library?lang={language}", cancel));
        var lacking = new List<string>();
        foreach (var entry in LibraryShelf.Of(CultureInfo.GetCultureInfo(language)))
        {
            if (!list.Contains($"href=\"{entry.Address}\">{entry.Words.Name}<", StringComparison.Ordinal)) lacking.Add($"{entry.Key} in the list");
            var answer = await served.Client.GetAsync($"{entry.Address}?lang={language}", cancel);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{entry.Key} answered {answer.StatusCode}.");
            var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(cancel));
            string[] words =
            [
                entry.Words.Name, entry.Words.Purpose, entry.Words.Caution, .. entry.Words.Cues, .. entry.Words.Levels,
                .. entry.Words.Errors.SelectMany(e => new[] { e.Seen, e.Cause, e.Question }), .. entry.Words.Adaptations.Select(a => a.Change),
                .. entry.Words.Factors.Values.Select(f => f.Name),
            ];
            lacking.AddRange(words.Where(w => !page.Contains(w, StringComparison.Ordinal)).Select(w => $"{entry.Key}: {w}"));
        }
        Assert.Empty(lacking);
    }

    [Fact]
    public async Task Library_SearchedByKeyboard_LeadsToATaskThatIsAddedOnce()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/library").ToString());
        Assert.Equal(79, await page.Locator(".task-card").CountAsync());

        await page.Locator("#words").FillAsync("LEG-in-front");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("words=LEG"));
        Assert.Equal(1, await page.Locator(".task-card").CountAsync());
        await page.Locator(".task-card a").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.EndsWith("/library/flamingo-balance", StringComparison.Ordinal));

        // Its words are taken in the language that is chosen, not in the reader's.
        await page.Locator("#Language").SelectOptionAsync("es");
        await page.Locator(".library-add button").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("/tasks/"));
        var spanish = LibraryShelf.Find("flamingo-balance", CultureInfo.GetCultureInfo("es"))!;
        await page.Locator("h1", new() { HasTextString = spanish.Words.Name }).WaitForAsync();
        Assert.EndsWith(spanish.Design.Id.ToString(), page.Url);

        await page.GotoAsync(new Uri(served.Address, "/library/flamingo-balance").ToString());
        Assert.Equal(0, await page.Locator(".library-add").CountAsync());
        Assert.Equal($"/tasks/{spanish.Design.Id}", await page.Locator(".page-header .button.main").GetAttributeAsync("href"));
        await page.GotoAsync(new Uri(served.Address, "/library?words=leg-in-front").ToString());
        Assert.Equal(1, await page.Locator(".task-card .tag.on").CountAsync());
    }

    [Fact]
    public async Task File_SavedFromTheLibrary_IsLookedAtAndAddedByOpeningIt()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/library/star-stand").ToString());
        var saved = await page.RunAndWaitForDownloadAsync(() => page.Locator("a[download]").ClickAsync());
        Assert.Equal("star-stand.json", saved.SuggestedFilename);
        var text = await File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken);
        var entry = LibraryShelf.Find("star-stand", CultureInfo.GetCultureInfo("en"))!;
        Assert.Equal(DesignFile.Write(entry.Design), text);

        await page.GotoAsync(new Uri(served.Address, "/tasks").ToString());
        await page.Locator("a[href='/tasks/open']").ClickAsync();
        await page.Locator("#task-file:enabled").WaitForAsync();
        // Without its words a task is nobody's: nothing can be added.
        var bare = JsonNode.Parse(text)!.AsObject();
        bare.Remove("words");
        await OpenAsync(page, "bare.json", bare.ToJsonString(), "refused");
        Assert.Equal(0, await page.Locator("#add").CountAsync());
        Assert.True(await page.Locator(".findings .refused").CountAsync() > 0);

        await OpenAsync(page, "star-stand.json", text, "ready");
        Assert.Equal(entry.Design.Levels.Count, await page.Locator(".task-levels > li").CountAsync());
        Assert.Empty(await SeriousAsync(page));
        await page.Locator("#add").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#opened[data-look=added]").WaitForAsync();
        await OpenAsync(page, "star-stand.json", text, "refused");
        Assert.Equal(0, await page.Locator("#add").CountAsync());
        await page.Locator("#opened a").ClickAsync();
        await page.Locator("h1", new() { HasTextString = entry.Words.Name }).WaitForAsync();
    }

    [Theory]
    [InlineData(1280, false, "en-GB")]
    [InlineData(320, true, "es-ES")]
    public async Task Library_OnALargeAndASmallScreen_HasNothingSeriousForAxeAndFits(int widthPx, bool isDark, string locale)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = locale, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = widthPx, Height = 900 },
        });
        await using var served = await ServedHost.StartAsync();
        foreach (var address in new[] { "/library", "/library?words=zeppelin", "/library/forward-roll", "/library/frog-balance", "/tasks/open" })
        {
            await page.GotoAsync(new Uri(served.Address, address).ToString());
            // Source: [WCAG22] 1.4.10, no scrolling in two directions at 320 px; wide tables scroll inside the page.
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= widthPx, $"{address} is too wide.");
            Assert.Empty((await SeriousAsync(page)).Select(v => $"{address} {v}"));
        }
    }

    [Fact]
    public async Task Lesson_WithTasksOfTheLibrary_OffersTheQuestionsOfTheirErrors()
    {
        await using var served = await ServedHost.StartAsync();
        var cancel = TestContext.Current.CancellationToken;
        var lesson = Regex.Match(await served.Client.GetStringAsync("/lessons", cancel), "/lessons/[0-9a-f]{8}-[0-9a-f-]{27}").Value;
        // The reader's language, whatever the school took the task's words in.
        var page = WebUtility.HtmlDecode(await served.Client.GetStringAsync(lesson + "?lang=es", cancel));
        // The demo school's next lesson is the one of frog and target.
        foreach (var key in new[] { "frog-balance", "target-throw" })
            Assert.All(LibraryShelf.Find(key, CultureInfo.GetCultureInfo("es"))!.Words.Errors, e => Assert.Contains(e.Question, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Task_ThatTheLibraryDoesNotHave_SaysSo()
    {
        await using var served = await ServedHost.StartAsync();
        var page = await served.Client.GetStringAsync("/library/no-such-task", TestContext.Current.CancellationToken);
        Assert.DoesNotContain("task-cues", page, StringComparison.Ordinal);
        Assert.Contains("<h1>", page, StringComparison.Ordinal);
    }

    private static async Task OpenAsync(IPage page, string name, string text, string state)
    {
        await page.Locator("#task-file").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
        await page.Locator($"#opened[data-look={state}]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    private static async Task<string[]> SeriousAsync(IPage page) => [.. (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical")
        .Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")];
}
