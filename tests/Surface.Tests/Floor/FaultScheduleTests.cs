using System.Globalization;
using Microsoft.Playwright;
using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>Tablets in a gym where everything goes wrong, against the model of what their screens have said.</summary>
public sealed class FaultScheduleTests(Browser browser, DemoFolder demo, ITestOutputHelper output)
{
    private const int LeastRoundCount = 300;

    private static readonly BrowserNewContextOptions Small = new() { ViewportSize = new() { Width = 360, Height = 640 }, Locale = "en-GB", HasTouch = true };

    private static int RoundCount => int.TryParse(Environment.GetEnvironmentVariable("SLANTWISE_FLOOR_ROUNDS"), CultureInfo.InvariantCulture, out var rounds) ? rounds : LeastRoundCount;

    private static int Seed => int.TryParse(Environment.GetEnvironmentVariable("SLANTWISE_FLOOR_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : Random.Shared.Next(1, 100_000);

    [Fact]
    public async Task Store_AfterHundredsOfFaults_HoldsWhatScreensAcknowledgedAndNothingElse()
    {
        var seed = Seed;
        await using var gym = await Gym.OpenAsync(demo);
        await using var wire = await Wire.StartAsync(() => gym.Served.Address, seed);
        var model = new Acknowledged();
        var ids = gym.Record.Pupils.Select(p => p.Id).ToList();

        // The third pupil writes on two devices.
        (FloorDeviceKind Kind, Guid[] Pupils, bool IsShared)[] plan =
        [
            (FloorDeviceKind.Pupil, [ids[0]], false),
            (FloorDeviceKind.Pair, [ids[1], ids[2]], true),
            (FloorDeviceKind.Station, [ids[2], ids[3]], true),
            (FloorDeviceKind.Station, [.. ids[4..12]], false),
        ];
        var tablets = new List<FloorTablet>();
        foreach (var (kind, pupils, isShared) in plan)
        {
            var tablet = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync(Small)), gym, kind, model) { IsShared = isShared };
            await tablet.JoinAsync(wire.Address, pupils);
            await tablet.KeptAsync();
            tablets.Add(tablet);
        }
        wire.IsBad = true;
        var (round, kills, done) = (0, 0, new int[8]);
        try
        {
            await Task.WhenAll(tablets.Select((tablet, i) => Task.Run(async () =>
            {
                var chance = new Random((seed * 31) + i);
                while (Interlocked.Increment(ref round) is var now && now <= RoundCount) await RoundAsync(tablet, chance, now);
            })));

            // The network heals.
            await wire.HealAsync();
            foreach (var tablet in tablets) await OnlineAsync(tablet);
            foreach (var tablet in tablets) await tablet.SentAsync();
        }
        finally
        {
            output.WriteLine($"Seed {seed}, {RoundCount} rounds, {kills} deaths of the program; {model.Count} entries acknowledged. "
                + $"Rounds: {done[0]} steps, {done[1]} undone, {done[2]} network on or off, {done[3]} reloads, {done[4]} closed and opened, {done[5]} clocks set, {done[6]} streams cut. "
                + $"Batches: {string.Join(", ", wire.Faults.OrderBy(f => f.Key).Select(f => $"{f.Key} {f.Value}"))}.");
        }
        foreach (var tablet in tablets) Assert.Equal(0, await tablet.CountAsync(".status-line [data-state=refused]"));
        model.AssertHeldBy(await gym.EntriesAsync());
        Assert.True(model.Count > RoundCount / 4);

        async Task RoundAsync(FloorTablet tablet, Random chance, int now)
        {
            if (now % (Math.Max(LeastRoundCount, RoundCount) / 3) == 0)
            {
                kills++;
                await gym.KillAndStartAgainAsync();
                return;
            }
            switch (chance.Next(100))
            {
                case < 72: done[0]++; await LiveAsync(tablet, chance); break;
                case < 76: done[1]++; await tablet.UndoAsync(); break;
                case < 82: done[2]++; await tablet.Page.Context.SetOfflineAsync(chance.Next(2) == 0); break;
                case < 88: done[3]++; await GoneAsync(tablet, chance, tablet.ReloadAsync); break;
                case < 92: done[4]++; await GoneAsync(tablet, chance, () => ReopenAsync(tablet)); break;
                case < 96: done[5]++; await tablet.AskAsync<object>("ms => walk.skew(ms)", chance.NextInt64(-400L * 86_400_000, 400L * 86_400_000)); break;
                default: done[6]++; wire.CutStreams(); break;
            }
        }

        // In the middle of a step the page goes away.
        async Task GoneAsync(FloorTablet tablet, Random chance, Func<Task> leave)
        {
            var living = LiveAsync(tablet, chance);
            await Task.Delay(chance.Next(400));
            await tablet.AwayAsync(living, leave);
        }

        async Task ReopenAsync(FloorTablet tablet)
        {
            var context = tablet.Page.Context;
            await tablet.Page.CloseAsync();
            await tablet.ReopenAsync(await context.NewPageAsync(), wire.Address);
        }

        static async Task LiveAsync(FloorTablet tablet, Random chance)
        {
            if (await tablet.StepAsync() != "mine") await tablet.StepOnAsync(chance);
            else if (tablet.Pupils.Count == 1) await tablet.UndoAsync();
            else await tablet.OnAsync(".page-foot .button.main");
        }

        static async Task OnlineAsync(FloorTablet tablet)
        {
            await tablet.Page.Context.SetOfflineAsync(true);
            await tablet.Page.Context.SetOfflineAsync(false);
        }
    }
}
