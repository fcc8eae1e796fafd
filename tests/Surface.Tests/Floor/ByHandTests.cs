using Microsoft.Playwright;
using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>Entries that are carried to the teacher's phone where there is no network at all: as a file, and as codes on a screen.</summary>
public sealed class ByHandTests(Browser browser, DemoFolder demo)
{
    [Fact]
    public async Task Entries_CarriedWithoutANetwork_ArriveOnce()
    {
        await using var gym = await Gym.OpenAsync(demo);
        using var folder = new TempFolder();
        var (floor, model, chance) = (gym.Served.Address, new Acknowledged(), new Random(11));
        var tablet = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync()), gym, FloorDeviceKind.Pupil, model);
        await tablet.JoinAsync(floor, [gym.Record.Pupils[3].Id]);
        var phone = new FloorPhone(await FloorPage.ReadyAsync(await browser.NewPageAsync()), gym, model);
        await phone.JoinAsync(floor);
        await Task.WhenAll(tablet.KeptAsync(), phone.KeptAsync());

        foreach (var page in (FloorPage[])[tablet, phone]) await page.Page.Context.SetOfflineAsync(true);
        await gym.KillAsync();
        await StepsAsync(6);
        var first = model.CountOf(tablet.DeviceId);
        Assert.True(first > 0);

        // As a file: saved on the tablet, opened on the phone; twice makes no difference.
        await OpenLeaveAsync();
        var saving = tablet.Page.WaitForDownloadAsync();
        await tablet.TapAsync(".device-part .row .button");
        var file = folder.At("carried.jsonl");
        await (await saving).SaveAsAsync(file);
        await phone.ForAsync(".tab-key", ".inbox", nth: 3);
        await phone.Page.Locator(".inbox input[accept*='.jsonl']").SetInputFilesAsync(file);
        await phone.SeeAsync($".frame[data-unsent='{first}']");
        await phone.Page.Locator(".inbox input[accept*='.jsonl']").SetInputFilesAsync(file);
        await Assertions.Expect(phone.Page.Locator(".inbox [role=status]")).ToContainTextAsync(" 0 ", new() { Timeout = (float)HostProgram.Patience.TotalMilliseconds });
        Assert.Equal(1, await phone.CountAsync($".frame[data-unsent='{first}']"));
        await tablet.AskAsync<object>("walk.away('.dialog > .foot .button', '.dialog')");

        // As codes: more has been done since; the phone gets a picture of each, in no good order.
        await StepsAsync(8);
        var all = model.CountOf(tablet.DeviceId);
        Assert.True(all > first);
        await OpenLeaveAsync();
        await tablet.ForAsync(".device-part .row .button", ".chain .chain-code path", nth: 1);
        if (await tablet.CountAsync(".chain .row .button") == 3) await tablet.TapAsync(".chain .row .button");
        var total = await tablet.AskAsync<int>("Number(document.querySelector('.chain').dataset.total)");
        var pictures = new List<string>();
        for (var at = 0; at < total; at++)
        {
            pictures.Add(folder.At($"code-{at}.png"));
            await tablet.Page.Locator(".chain-code").ScreenshotAsync(new() { Path = pictures[^1] });
            if (at + 1 == total) break;
            var part = await tablet.AskAsync<int>("Number(document.querySelector('.chain').dataset.part)");
            var drawn = await tablet.AskAsync<string>("document.querySelector('.chain-code path').getAttribute('d')");
            await tablet.ForAsync(".chain .row .button", $".chain[data-part='{(part % total) + 1}']", nth: 1);
            await tablet.AskAsync<object>("d => walk.drawn(d)", drawn);
        }
        pictures.Reverse();
        await phone.Page.Locator(".inbox input[accept*='image']").SetInputFilesAsync(pictures);
        await phone.SeeAsync($".frame[data-unsent='{all}']");

        // The phone alone finds the network, and brings everything under the tablet's name; then the tablet comes too.
        await gym.StartAgainAsync();
        await phone.Page.Context.SetOfflineAsync(false);
        await phone.SentAsync();
        model.AssertHeldBy(await gym.EntriesAsync());
        await tablet.Page.Context.SetOfflineAsync(false);
        await tablet.SentAsync();
        model.AssertHeldBy(await gym.EntriesAsync());
        Assert.Equal(0, await tablet.CountAsync(".status-line [data-state=refused]"));

        async Task StepsAsync(int count)
        {
            for (var step = 0; step < count; step++) await tablet.StepOnAsync(chance);
        }

        async Task OpenLeaveAsync()
        {
            await tablet.ForAsync(".status-line .settings-key", ".dialog .device-part");
            await tablet.ForAsync(".device-part .button.quiet", ".device-part .row");
        }
    }
}
