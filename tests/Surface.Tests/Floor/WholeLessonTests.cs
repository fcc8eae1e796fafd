using System.Diagnostics;
using Microsoft.Playwright;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>A lesson of thirty pupils on eight devices, a teacher's phone and a board, through everything that happens to one.</summary>
public sealed class WholeLessonTests(Browser browser, DemoFolder demo, ITestOutputHelper output)
{
    private const int Seed = 6;

    // Lessons, bundles, own entries, others' entries.
    private static readonly int[] Nothing = [0, 0, 0, 0];

    private static readonly BrowserNewContextOptions Small = new() { ViewportSize = new() { Width = 412, Height = 800 }, Locale = "en-GB", HasTouch = true };

    [Fact]
    public async Task Lesson_ThroughNetworkLossAndDeaths_IsWhatItsScreensSaid()
    {
        await using var gym = await Gym.OpenAsync(demo, pupilCount: 30);
        using var profile = new TempFolder();
        var model = new Acknowledged();
        var floor = gym.Served.Address;
        var ids = gym.Record.Pupils.Select(p => p.Id).ToList();
        Assert.Equal(30, ids.Count);

        // One of their own, two pairs, five stations of five; the last station is a browser of its own, which is to die.
        var tablets = new List<FloorTablet>();
        Guid[][] plan = [ids[..1].ToArray(), ids[1..3].ToArray(), ids[3..5].ToArray(), .. ids[5..].Chunk(5)];
        var mortal = await browser.OpenProfileAsync(profile.At("profile"));
        foreach (var pupils in plan)
        {
            var kind = pupils.Length switch { 1 => FloorDeviceKind.Pupil, 2 => FloorDeviceKind.Pair, _ => FloorDeviceKind.Station };
            var page = tablets.Count == plan.Length - 1 ? mortal.Pages[0] : await browser.NewPageAsync(Small);
            tablets.Add(new FloorTablet(await FloorPage.ReadyAsync(page), gym, kind, model));
        }
        var phone = new FloorPhone(await FloorPage.ReadyAsync(await browser.NewPageAsync(Small)), gym, model);
        var board = new FloorPage(await FloorPage.ReadyAsync(await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 }, Locale = "en-GB" })));
        Assert.Equal(8, tablets.Count);
        await phone.JoinAsync(floor);
        await board.GoAsync(floor, $"/floor/board#ticket={gym.Ticket(FloorDeviceKind.Board)}");
        await Task.WhenAll(tablets.Select((tablet, i) => Task.Run(async () =>
        {
            await tablet.JoinAsync(floor, plan[i], isByLink: i % 2 == 0);
            await tablet.KeptAsync();
        })));
        await phone.KeptAsync();
        await phone.PhaseAsync(PhaseKind.Activity);
        var before = Stopwatch.GetTimestamp();

        // A first part with the network, while the teacher goes round.
        await Task.WhenAll([.. tablets.Select((t, i) => Task.Run(() => SetsAsync(t, i, plan[i].Length == 1 ? plan[i] : plan[i][..^(plan[i].Length / 2)]))), Task.Run(GoRoundAsync)]);

        await phone.StopAsync();
        await Task.WhenAll([.. tablets.Select(t => t.SeeAsync(".cover.stop")), board.SeeAsync(".cover.stop")]);
        await phone.GoOnAsync();
        await Task.WhenAll([.. tablets.Select(t => t.GoneAsync(".cover")), board.GoneAsync(".cover")]);

        // The network and the program are gone, and everybody goes on.
        foreach (var page in tablets.Append<FloorPage>(phone).Append(board)) await page.Page.Context.SetOfflineAsync(true);
        await gym.KillAsync();
        await Task.WhenAll([.. tablets.Select((t, i) => Task.Run(() => OfflineAsync(t, i))), Task.Run(() => phone.VisitAsync(ids[7], VisitTopic.Cue, VisitForm.Valued))]);
        Assert.True(model.Count > (await gym.EntriesAsync()).Count);
        await board.SeeAsync(".board-task");

        // Both are back.
        await gym.StartAgainAsync();
        foreach (var page in tablets.Append<FloorPage>(phone).Append(board)) await page.Page.Context.SetOfflineAsync(false);
        await Task.WhenAll([.. tablets.Select(t => t.SentAsync()), phone.SentAsync()]);
        await phone.SeeAsync(".top-sent[data-unsent='0']:not([data-offline])");
        output.WriteLine($"{model.Count} entries acknowledged in {Stopwatch.GetElapsedTime(before).TotalSeconds:0} s.");

        var entries = await gym.EntriesAsync();
        model.AssertHeldBy(entries);
        Assert.Equal(model.Count, entries.Count);
        Assert.Equal(ids.Order(), entries.Where(e => e.Fact is Decision).Select(e => e.PupilId!.Value).Distinct().Order());
        // Nobody has corrected anything: what was said is what holds.
        Assert.Equal(model.All().Select(a => a.ToString()).Order(StringComparer.Ordinal), EntryLog.Current(entries).Select(e => Act.Of(e).ToString()).Order(StringComparer.Ordinal));

        var desk = await browser.NewPageAsync();
        await desk.GotoAsync(new Uri(floor, $"/lessons/{gym.Lesson.LessonId}/floor").ToString());
        await Assertions.Expect(desk.Locator("#floor[data-live=true][data-unsent='0'][data-devices='10']")).ToHaveCountAsync(1, new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });

        // One leaves by itself, the others when the lesson ends; each is empty then.
        await tablets[0].ForAsync(".status-line .settings-key", ".dialog .device-part");
        await tablets[0].ForAsync(".device-part .button.quiet", ".device-part .button.grave");
        await tablets[0].OnAsync(".device-part .button.grave");
        await tablets[0].AtAsync("start");
        Assert.Equal(Nothing, await tablets[0].OnDiskAsync());
        await phone.EndAsync();
        foreach (var tablet in tablets.Skip(1))
        {
            await tablet.SeeAsync(".cover.end .button.main");
            Assert.Equal(Nothing, await tablet.OnDiskAsync());
        }
        await mortal.CloseAsync();

        async Task GoRoundAsync()
        {
            await phone.VisitAsync(ids[0], VisitTopic.Decision, VisitForm.Asked);
            await phone.VisitAsync(ids[10], VisitTopic.Safety, VisitForm.Corrected);
            await phone.ScanAsync(offCount: 3);
            await phone.NoteAsync(ids[20], "Holds her breath: count aloud next time. ñ");
            await phone.CheckAsync(ids[12]);
        }

        async Task OfflineAsync(FloorTablet tablet, int i)
        {
            var chance = new Random((Seed * 100) + i);
            var rest = plan[i].Length == 1 ? plan[i] : plan[i][^(plan[i].Length / 2)..];
            if (i is 0 or 7)
            {
                // In the middle of a step: the first page is loaded again without a network, the last browser dies.
                await BeginAsync(tablet, rest[0], chance);
                var living = tablet.StepOnAsync(chance);
                await tablet.AwayAsync(living, i == 0 ? tablet.ReloadAsync : () => DieAndReopenAsync(tablet));
            }
            await SetsAsync(tablet, i + 50, rest);
        }

        async Task DieAndReopenAsync(FloorTablet tablet)
        {
            Browser.KillProfile(profile.At("profile"));
            mortal = await browser.OpenProfileAsync(profile.At("profile"));
            await tablet.ReopenAsync(await FloorPage.ReadyAsync(mortal.Pages[0]), floor);
        }

        static async Task BeginAsync(FloorTablet tablet, Guid pupil, Random chance)
        {
            await tablet.TurnToAsync(pupil);
            if (await tablet.StepAsync() == "task") await tablet.StepOnAsync(chance);
        }

        // A whole set for each of them: from the choice to the decision.
        static async Task SetsAsync(FloorTablet tablet, int i, IReadOnlyList<Guid> pupils)
        {
            var chance = new Random((Seed * 1000) + i);
            foreach (var pupil in pupils)
            {
                await BeginAsync(tablet, pupil, chance);
                while (!(await tablet.StepAsync()).StartsWith("decide-", StringComparison.Ordinal)) await tablet.StepOnAsync(chance);
                await tablet.StepOnAsync(chance);
            }
        }
    }
}
