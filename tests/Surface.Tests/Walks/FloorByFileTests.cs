using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

/// <summary>A lesson for tablets without a network: handed over as a file, brought back as one.</summary>
public sealed class FloorByFileTests(Browser browser, DemoFolder demo)
{
    private static readonly float Patience = (float)HostProgram.Patience.TotalMilliseconds;

    [Fact]
    public async Task File_ForATablet_IsADeviceAndItsEntriesComeBackOnce()
    {
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(Patience);
        var address = await OpenAsync(page, served);

        var saving = page.WaitForDownloadAsync();
        await page.Locator("#save-file").ClickAsync();
        var download = await saving;
        await Assertions.Expect(page.Locator("#floor")).ToHaveAttributeAsync("data-devices", "1", new() { Timeout = Patience });
        var file = JsonNode.Parse(await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken))!;
        Assert.Equal("slantwise-bundle/1", file["format"]!.GetValue<string>());
        Assert.Equal("Station", file["bundle"]!["kind"]!.GetValue<string>(), ignoreCase: true);
        var pupils = file["bundle"]!["pupils"]!.AsArray();
        Assert.Equal(28, pupils.Count);
        Assert.Matches(@"^7-Heron-\d{4}-\d\d-\d\d-lesson-file-[\w-]+\.json$", download.SuggestedFilename);
        foreach (var pupil in pupils) Assert.DoesNotContain(pupil!["label"]!.GetValue<string>(), download.SuggestedFilename);

        // What a tablet writes without a network, and saves.
        var lines = EntryFile.WriteJsonLines(Written(file, pupils[0]!, pupils[1]!)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(4, lines.Length);
        await BringAsync("one.jsonl", [lines[0], lines[1], lines[2]]);
        Assert.Equal(["3", "0", "0"], await page.Locator("#bring-back dd").AllInnerTextsAsync());
        await TakeAsync("3");

        // The same again with one more and one that belongs to nobody: nothing twice, and the bad one named.
        await BringAsync("two.jsonl", [.. lines, lines[3].Replace(pupils[1]!["pupilId"]!.GetValue<string>(), Guid.NewGuid().ToString(), StringComparison.Ordinal).Replace(IdOf(lines[3]), Guid.NewGuid().ToString(), StringComparison.Ordinal)]);
        Assert.Equal(["1", "3", "1"], await page.Locator("#bring-back dd").AllInnerTextsAsync());
        Assert.Contains("two.jsonl", await page.Locator("#bring-back .findings .refused").InnerTextAsync());
        Assert.Equal(3, await EntryCountAsync());
        await TakeAsync("1");
        await BringAsync("two.jsonl", lines);
        Assert.Equal(["0", "4", "0"], await page.Locator("#bring-back dd").AllInnerTextsAsync());
        Assert.Equal(0, await page.Locator("#take").CountAsync());
        Assert.Equal(4, await EntryCountAsync());

        // The tablet finds the program after all: what it has is known already.
        var tablet = new FloorDevice(served, file["device"]!["deviceId"]!.GetValue<string>());
        tablet.Take(file["token"]!.GetValue<string>());
        var again = await tablet.SendAsync(4, [.. lines.Select(l => JsonSerializer.Deserialize<Entry>(l, EntryJson.Options)!)]);
        Assert.Equal((4, 0), (again.TakenIds.Count, again.Refused.Count));
        Assert.Equal(4, await EntryCountAsync());

        async Task BringAsync(string name, string[] content)
        {
            await page.Locator("#entry-files").SetInputFilesAsync(folder.Write(name, string.Join('\n', content)));
            await page.Locator("#bring-back[data-read=true]").WaitForAsync();
        }

        async Task TakeAsync(string count)
        {
            await page.Locator("#take").ClickAsync();
            await Assertions.Expect(page.Locator("#bring-back")).ToHaveAttributeAsync("data-taken", count, new() { Timeout = Patience });
        }

        async Task<int> EntryCountAsync()
        {
            await using var store = await LessonOfDemo.OpenAsync(folder);
            return (await LessonOfDemo.LoadAsync(store, Guid.Parse(address.Split('/')[2]))).Entries.Count;
        }
    }

    [Theory]
    [InlineData(1, "Pupil", 1)]
    [InlineData(2, "Pair", 2)]
    [InlineData(3, "Station", 3)]
    public async Task File_ForChosenPupils_HoldsNobodyElse(int count, string kind, int inBundle)
    {
        using var folder = await demo.CopyAsync();
        var lessonId = (await LessonOfDemo.OpenForTabletsAsync(folder)).LessonId;
        Guid[] chosen;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) chosen = [.. (await LessonOfDemo.LoadAsync(store, lessonId)).Pupils.Skip(4).Take(count).Select(p => p.Id)];
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);

        var answer = await AskAsync();
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        var file = JsonNode.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
        Assert.Equal(kind, file["bundle"]!["kind"]!.GetValue<string>(), ignoreCase: true);
        Assert.Equal(inBundle, file["bundle"]!["pupils"]!.AsArray().Count);
        Assert.Equal(chosen.Order(), file["bundle"]!["pupils"]!.AsArray().Select(p => p!["pupilId"]!.GetValue<Guid>()).Order());
        Assert.Equal(kind, file["device"]!["kind"]!.GetValue<string>(), ignoreCase: true);
        var tablet = new FloorDevice(served, file["device"]!["deviceId"]!.GetValue<string>());
        tablet.Take(file["token"]!.GetValue<string>());
        Assert.Equal(count > 2 ? [] : chosen.Order(), (await tablet.SendAsync(0)).State.PupilIds.Order());

        Task<HttpResponseMessage> AskAsync() => served.Client.PostAsync(
            $"/lessons/{lessonId}/floor/bundle.json", new FormUrlEncodedContent(chosen.Select(id => KeyValuePair.Create("pupil", id.ToString()))), TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task File_OfALessonThatIsNotOpen_IsRefusedAndMakesNoDevice()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var answer = await served.Client.PostAsync($"/lessons/{lessonId}/floor/bundle.json", null, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains($"/lessons/{lessonId}/floor", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        await using var store = await LessonOfDemo.OpenAsync(folder);
        Assert.Empty(await store.ListFloorDevicesAsync((await LessonOfDemo.LoadAsync(store, lessonId)).School.Id, lessonId));
    }

    // The next lesson of the demo school, opened on its page.
    private static async Task<string> OpenAsync(IPage page, ServedHost served)
    {
        await page.GotoAsync(served.Address.ToString());
        var address = (await page.Locator("#next a[href$='/floor']").GetAttributeAsync("href"))!;
        await page.GotoAsync(new Uri(served.Address, address).ToString());
        await page.Locator("fieldset.live:not([disabled]) #open").ClickAsync();
        await page.Locator("#floor[data-state=open][data-live=true]").WaitForAsync();
        return address;
    }

    private static IEnumerable<Entry> Written(JsonNode file, JsonNode one, JsonNode two)
    {
        var bundle = file["bundle"]!;
        var task = bundle["tasks"]![0]!;
        var number = 0;
        Entry Of(JsonNode pupil, int? trial, EntryFact fact) => new()
        {
            SchoolId = bundle["schoolId"]!.GetValue<Guid>(),
            Id = EntryId.New(TimeProvider.System),
            LessonId = bundle["lessonId"]!.GetValue<Guid>(),
            PupilId = pupil["pupilId"]!.GetValue<Guid>(),
            TaskId = task["taskId"]!.GetValue<Guid>(),
            SetNumber = 1,
            TrialNumber = trial,
            Fact = fact,
            Source = EntrySource.Floor,
            DeviceId = file["device"]!["deviceId"]!.GetValue<string>(),
            DeviceSequence = ++number,
            MadeAt = TimeProvider.System.GetUtcNow(),
        };
        Choice First(JsonNode pupil) => new(pupil["offers"]![0]!["levelIds"]![0]!.GetValue<Guid>());
        yield return Of(one, null, First(one));
        yield return Of(one, 1, new Trial(true));
        yield return Of(one, 2, new Trial(false));
        yield return Of(two, null, First(two));
    }

    private static string IdOf(string line) => JsonNode.Parse(line)!["id"]!.GetValue<string>();
}
