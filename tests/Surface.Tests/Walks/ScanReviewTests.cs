using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans.Intake;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class ScanReviewTests(Browser browser, DemoFolder demo)
{
    private static readonly float Patience = (float)HostProgram.Patience.TotalMilliseconds;

    [Fact]
    public async Task Walk_PileOfAClass_SentReviewedByKeysAndSeenInTheEvidence()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(Patience);
        using var folder = await demo.CopyAsync();
        var pile = await ScanPile.MakeAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var lesson = $"/lessons/{pile.LessonId}";
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);

        // Chosen at the lesson: sent one by one, and what became of each is said.
        await OpenAsync(page, served, lesson);
        await page.Locator("fieldset.live:not([disabled])").WaitForAsync();
        Assert.Contains("up to 200 MB a file", await page.Locator("form[data-upload]").InnerTextAsync());
        await LookAsync(page, "lesson");
        await page.Locator("form[data-upload] input[type=file]").SetInputFilesAsync(pile.Files);
        await page.WaitForURLAsync("**/scans?pile=*", new() { Timeout = Patience });
        await LookAsync(page, "overview");
        var lines = page.Locator(".pile-lines .unread");
        Assert.Equal(1, await lines.CountAsync());
        Assert.Contains("notes.jpg", await lines.InnerTextAsync());
        Assert.Contains("neither a JPEG or PNG", await lines.InnerTextAsync());
        Assert.Contains($"Look at {ScanPile.WaitingCount} marks", await page.Locator("a.big").InnerTextAsync());
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.At("incoming")));

        // The page with coffee on its code: those without a page stand first.
        var held = page.Locator(".held");
        Assert.Equal(1, await held.CountAsync());
        var first = await held.Locator("optgroup").First.Locator("option").AllInnerTextsAsync();
        Assert.DoesNotContain(pile.Pupils[0].Label, first);
        await held.Locator("select").SelectOptionAsync(pile.Pupils[4].Id.ToString());
        await held.Locator("button[value=assign]").ClickAsync();
        await page.Locator("h1").WaitForAsync();
        await Assertions.Expect(page.Locator(".held")).ToHaveCountAsync(0, new() { Timeout = Patience });

        // By keys alone: what differs first, then the levels, the trial, what comes next.
        await page.Locator("a.big").ClickAsync();
        var review = page.Locator("#review");
        await page.Locator("#review[data-live=true]").WaitForAsync();
        await IsOpenAsync(review, ScanPile.WaitingCount);
        await LookAsync(page, "review-differs");
        Assert.Contains(pile.Pupils[3].Label, await page.Locator(".who").InnerTextAsync());
        Assert.Contains("Entered before: level 1", await page.Locator(".doubt").InnerTextAsync());
        Assert.Contains("The sheet says: level 3", await page.Locator(".doubt").InnerTextAsync());
        Assert.True(await page.EvaluateAsync<bool>("[...document.querySelectorAll('.review-pictures img:not([hidden])')].every(i => i.complete && i.naturalWidth > 100)"));
        await page.Keyboard.PressAsync("Enter");
        await IsOpenAsync(review, 5);
        // The faint one: as shown.
        Assert.Contains("faint", await page.Locator(".doubt").InnerTextAsync());
        await page.Keyboard.PressAsync("c");
        await page.Locator("[aria-pressed=true]").WaitForAsync();
        await LookAsync(page, "review-row");
        await page.Keyboard.PressAsync("c");
        await page.Keyboard.PressAsync("y");
        await IsOpenAsync(review, 4);
        Assert.Contains("Several are marked", await page.Locator(".doubt").InnerTextAsync());
        // A key nothing stands for, Enter among them, does nothing where nothing is certain.
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("9");
        await LookAsync(page, "review-several");
        await IsOpenAsync(review, 4);
        await page.Keyboard.PressAsync("2");
        await IsOpenAsync(review, 3);

        // In the middle the page is loaded again: nothing is lost, and the last answer can be taken back.
        await review.And(page.Locator("[data-storing=false]")).WaitForAsync();
        await page.ReloadAsync();
        await page.Locator("#review[data-live=true]").WaitForAsync();
        await IsOpenAsync(review, 3);
        Assert.Contains("4 of 6", await page.Locator(".place").InnerTextAsync());
        await page.Keyboard.PressAsync("z");
        await IsOpenAsync(review, 4);
        Assert.Contains(pile.Pupils[0].Label, await page.Locator(".who").InnerTextAsync());
        await page.Keyboard.PressAsync("1");
        await IsOpenAsync(review, 3);
        // No level: nothing is chosen, so nothing is entered.
        Assert.Contains("no level is", await page.Locator(".doubt").InnerTextAsync());
        await page.Keyboard.PressAsync("0");
        await IsOpenAsync(review, 2);
        await page.Keyboard.PressAsync("1");
        await IsOpenAsync(review, 1);
        await page.Keyboard.PressAsync("h");
        await IsOpenAsync(review, 0);
        await review.And(page.Locator("[data-storing=false]")).WaitForAsync();
        await LookAsync(page, "review-done");
        Assert.Contains("6 questions answered", await page.Locator(".review-done").InnerTextAsync());

        await using (var store = await LessonOfDemo.OpenAsync(folder))
        {
            var record = await LessonOfDemo.LoadAsync(store, pile.LessonId);
            var levels = record.Sheet!.Content.Tasks[0].Levels;
            var now = EntryLog.Current(record.Entries).ToList();
            Assert.Equal([levels[0].Id, null, levels[1].Id, levels[2].Id, levels[1].Id, levels[3].Id], pile.Pupils.Select(p =>
                (now.SingleOrDefault(e => e.PupilId == p.Id && e.TaskId == record.Sheet.Content.Tasks[0].TaskId && e.Fact is Choice)?.Fact as Choice)?.LevelId));
            Assert.Equal(NextLevel.Harder, now.Select(e => e.PupilId == pile.Pupils[2].Id && e.TaskId == record.Sheet.Content.Tasks[0].TaskId ? e.Fact : null).OfType<Decision>().Single().Next);
            // Everything is settled: the photos are gone.
            foreach (var scan in await store.ListScansAsync(record.School.Id, pile.LessonId))
            {
                Assert.Equal(ScanState.Done, scan.State);
                Assert.Empty(await store.ListScanPicturesAsync(record.School.Id, scan.Id));
            }
        }

        // To the evidence, the entries with their marks, and the pupil's own words.
        await page.Locator(".review-done a.big").ClickAsync();
        await page.WaitForURLAsync($"**{lesson}/evidence");
        await LookAsync(page, "evidence");
        await OpenAsync(page, served, $"{lesson}/entries?pupil={pile.Pupils[3].Id}");
        var mark = await page.Locator("a[href*='/scans/kept/']").First.GetAttributeAsync("href");
        var picture = await served.Client.GetAsync(mark, TestContext.Current.CancellationToken);
        Assert.Equal(("image/png", "no-store", "nosniff"), (picture.Content.Headers.ContentType!.MediaType, picture.Headers.CacheControl!.ToString(), picture.Headers.GetValues("X-Content-Type-Options").Single()));
        await LookAsync(page, "entries");
        await OpenAsync(page, served, $"/pupils/{pile.Pupils[3].Id}/evidence");
        await page.Locator(".own-words img").First.WaitForAsync();
        var words = await page.Locator(".own-words img").First.GetAttributeAsync("src");
        await LookAsync(page, "words");

        // Switched off they are not shown, here or by their address.
        await OpenAsync(page, served, "/settings");
        await page.Locator("input[name=KeepsWords]").UncheckAsync();
        await LookAsync(page, "settings");
        await page.Locator("#pictures button").ClickAsync();
        await page.WaitForURLAsync("**/settings?saved=pictures");
        await OpenAsync(page, served, $"/pupils/{pile.Pupils[3].Id}/evidence");
        Assert.Equal(0, await page.Locator(".own-words").CountAsync());
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await served.Client.GetAsync(words, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Empty(errors);
    }

    private static Task OpenAsync(IPage page, ServedHost served, string address) => page.GotoAsync(new Uri(served.Address, address).ToString(), new() { WaitUntil = WaitUntilState.NetworkIdle });

    private static Task IsOpenAsync(ILocator review, int count) => Assertions.Expect(review).ToHaveAttributeAsync("data-open", $"{count}", new() { Timeout = Patience });

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task LookAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("LOOK") is { } look) await page.ScreenshotAsync(new() { Path = Path.Combine(look, name + ".png"), FullPage = true });
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{name} scrolls sideways.");
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{name}: {v.Id}, {v.Help}, at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
