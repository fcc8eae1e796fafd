using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>The program is exchanged for a newer one in the middle of a lesson: the pages say so, and stay what they are until it is over.</summary>
public sealed class NewVersionTests(Browser browser, DemoFolder demo)
{
    private const string Newer = "0123456789ab";

    [Fact]
    public async Task Pages_NewerOnTheServerDuringALesson_ChangeAtTheNextStart()
    {
        await using var gym = await Gym.OpenAsync(demo);
        using var other = new TempFolder();
        var (floor, model, chance) = (gym.Served.Address, new Acknowledged(), new Random(3));
        var own = (await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "floor", "version.txt"), TestContext.Current.CancellationToken)).Trim();
        Assert.NotEqual(Newer, own);
        var tablet = new FloorTablet(await FloorPage.ReadyAsync(await browser.NewPageAsync()), gym, FloorDeviceKind.Pupil, model);
        await tablet.JoinAsync(floor, [gym.Record.Pupils[2].Id]);
        await tablet.KeptAsync();
        await tablet.StepOnAsync(chance);
        await tablet.AskAsync<object>("globalThis.isTheSamePage = true");
        Assert.Equal(0, await tablet.CountAsync(".status-line .muted"));

        // The note, and nothing else: the page is the same, and so it is after a reload in the lesson.
        await gym.KillAsync();
        await gym.StartAgainAsync(await NewerProgramAsync(other, own));
        await tablet.SeeAsync(".status-line .muted");
        for (var step = 0; step < 4; step++) await tablet.StepOnAsync(chance);
        await tablet.SentAsync();
        Assert.True(await tablet.AskAsync<bool>("globalThis.isTheSamePage === true"));
        await tablet.ReloadAsync();
        await tablet.SettleAsync();
        Assert.Contains(own, await VersionAsync(), StringComparison.Ordinal);
        await tablet.SeeAsync(".status-line .muted");
        await tablet.StepOnAsync(chance);

        // The lesson is left; the next start has the new pages.
        await tablet.SentAsync();
        await tablet.ForAsync(".settings-key", ".dialog .device-part");
        await tablet.ForAsync(".device-part .button.quiet", ".device-part .button.grave");
        await tablet.OnAsync(".device-part .button.grave");
        await tablet.AtAsync("start");
        Assert.Contains(own, await VersionAsync(), StringComparison.Ordinal);
        var isNewer = false;
        for (var start = 0; start < 2 && !isNewer; start++)
        {
            // No wait for a screen here: this start may load itself again at any moment, and the looks below expect that.
            await tablet.Page.GotoAsync(new Uri(floor, "/floor/").ToString());
            isNewer = await SoonAsync(Newer);
        }
        Assert.True(isNewer, "Two starts without a lesson, and the pages are the old ones.");
        model.AssertHeldBy(await gym.EntriesAsync());

        async Task<string> VersionAsync()
        {
            await tablet.ForAsync(".settings-key", ".dialog .device-part");
            var said = string.Join(' ', await tablet.TextsAsync(".device-part .small"));
            await tablet.AskAsync<object>("walk.away('.dialog > .foot .button', '.dialog')");
            return said;
        }

        // A start that finds newer pages loads itself again, whenever that is.
        async Task<bool> SoonAsync(string version)
        {
            for (var look = 0; look < 20; look++)
            {
                try
                {
                    if ((await VersionAsync()).Contains(version, StringComparison.Ordinal)) return true;
                    await Task.Delay(200);
                }
                catch (Microsoft.Playwright.PlaywrightException)
                {
                    // The page was loaded again in the middle of the question.
                    await tablet.Page.WaitForLoadStateAsync();
                    await tablet.Page.WaitForFunctionAsync("() => globalThis.walk && walk.step() !== ''");
                }
            }
            return false;
        }
    }

    // The same program with pages that call themselves newer, in every file that says so. What has not changed is linked to.
    private static async Task<string> NewerProgramAsync(TempFolder folder, string own)
    {
        foreach (var path in Directory.EnumerateFileSystemEntries(AppContext.BaseDirectory))
        {
            var name = Path.GetFileName(path);
            if (name == "floor") continue;
            if (Directory.Exists(path)) Directory.CreateSymbolicLink(folder.At(name), path);
            else if (name.StartsWith("slantwise.", StringComparison.Ordinal)) File.Copy(path, folder.At(name));
            else File.CreateSymbolicLink(folder.At(name), path);
        }
        var pages = Path.Combine(AppContext.BaseDirectory, "floor");
        foreach (var path in Directory.EnumerateFiles(pages, "*", SearchOption.AllDirectories))
        {
            // The packed forms would still say the old version; the program serves the plain ones where there are none.
            if (Path.GetExtension(path) is ".br" or ".gz") continue;
            var copy = folder.At(Path.Combine("floor", Path.GetRelativePath(pages, path)));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            if (Path.GetExtension(path) is not (".js" or ".txt")) File.Copy(path, copy);
            else await File.WriteAllTextAsync(copy, (await File.ReadAllTextAsync(path)).Replace(own, Newer, StringComparison.Ordinal));
        }
        return folder.At("slantwise.dll");
    }
}
