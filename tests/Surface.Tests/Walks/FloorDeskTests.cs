using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Records.Floor;
using Slantwise.Surface.Tests.Host;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Walks;

public sealed partial class FloorDeskTests(Browser browser, DemoFolder demo)
{
    private static readonly float Patience = (float)HostProgram.Patience.TotalMilliseconds;

    [Theory]
    [InlineData(1280, 900, "en-GB", false)]
    [InlineData(390, 844, "es-ES", true)]
    [InlineData(320, 720, "en-GB", true)]
    public async Task Lesson_OnTablets_IsOpenedJoinedMindedAndEnded(int width, int height, string language, bool isDark)
    {
        var page = await browser.NewPageAsync(new()
        {
            Locale = language, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = width, Height = height },
        });
        page.SetDefaultTimeout(Patience);
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var isEnglish = language.StartsWith("en", StringComparison.Ordinal);

        // From home to the lesson on tablets, by keyboard alone.
        await page.GotoAsync(served.Address.ToString());
        await page.Locator("#next a[href$='/floor']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        var floor = page.Locator("#floor");
        await StandsAsync("state", "new");
        Assert.Contains("--bind 0.0.0.0", await floor.InnerTextAsync());
        await LookAsync("new");
        await page.Locator("fieldset.live:not([disabled])").WaitForAsync();
        await page.Locator("#open").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await StandsAsync("state", "open");
        await StandsAsync("live", "true");

        // What the camera sees is what the wall says, dark on white in a dark page too.
        var code = await page.Locator("#code").InnerTextAsync();
        Assert.Matches(Code(), code);
        Assert.Equal($"{served.Address.Authority}/floor", await page.Locator("#address").InnerTextAsync());
        Assert.Equal($"{served.Address}floor/#join={code}", await SquareAsync("#join .floor-square"));
        await page.Locator("#phone").ClickAsync();
        Assert.StartsWith($"{served.Address}floor/teacher#ticket=", await SquareAsync("#phone-square .floor-square"));
        Assert.Contains($"/floor/board#ticket=", await page.Locator("#board").GetAttributeAsync("href"));
        await page.Locator("#phone").ClickAsync();
        await LookAsync("open");

        // A new code joins, the old one does not, and the square follows.
        await page.Locator("#renew").ClickAsync();
        await Assertions.Expect(page.Locator("#code")).Not.ToHaveTextAsync(code, new() { Timeout = Patience });
        var renewed = await page.Locator("#code").InnerTextAsync();
        Assert.Equal($"{served.Address}floor/#join={renewed}", await SquareAsync("#join .floor-square"));

        var tablet = new FloorDevice(served, "walk-tablet-1");
        var joined = await tablet.JoinAsync(FloorDeviceKind.Pupil, renewed);
        await StandsAsync("devices", "1");
        await tablet.ClaimAsync(joined.Pupils[0].PupilId);
        var row = page.Locator(".floor-devices > li").First;
        await Assertions.Expect(row).ToContainTextAsync(joined.Pupils[0].Label, new() { Timeout = Patience });
        Assert.False((await tablet.SendAsync(3)).State.IsLocked);
        await StandsAsync("unsent", "3");

        // Rename by keyboard; what joins meanwhile does not move it.
        await row.Locator("button").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await row.Locator("input").WaitForAsync();
        await Assertions.Expect(row.Locator("input")).ToBeFocusedAsync(new() { Timeout = Patience });
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("Blue mat");
        await new FloorDevice(served, "walk-tablet-2").JoinAsync(FloorDeviceKind.Station, renewed);
        await StandsAsync("devices", "2");
        await Assertions.Expect(row.Locator("input")).ToBeFocusedAsync(new() { Timeout = Patience });
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("[data-device='Blue mat']").WaitForAsync();
        Assert.Equal("Blue mat", (await tablet.SendAsync(3)).State.DeviceName);

        await row.Locator("button").Nth(1).ClickAsync();
        await row.Locator(".tag").WaitForAsync();
        Assert.True((await tablet.SendAsync(3)).State.IsLocked);
        await LookAsync("devices");
        await row.Locator("button").Nth(2).ClickAsync();
        await Assertions.Expect(row.Locator("button")).ToHaveCountAsync(2, new() { Timeout = Patience });
        Assert.Empty((await tablet.SendAsync(3)).State.PupilIds);

        // The end says first what is not here.
        await page.Locator("#end-ask").ClickAsync();
        await page.Locator("#end-now").WaitForAsync();
        Assert.Contains(isEnglish ? "3 entries are not here yet: Blue mat (3)." : "Faltan 3 anotaciones por llegar: Blue mat (3).", await page.Locator("#end").InnerTextAsync());
        await LookAsync("ending");
        await page.Locator("#end-now").ClickAsync();
        await StandsAsync("state", "closed");
        Assert.NotNull((await tablet.SendAsync(0)).State.ClosedAt);
        await StandsAsync("unsent", "0");
        await LookAsync("closed");

        Task StandsAsync(string what, string value) => Assertions.Expect(floor).ToHaveAttributeAsync("data-" + what, value, new() { Timeout = Patience });

        async Task<string> SquareAsync(string square)
        {
            await page.WaitForFunctionAsync("s => { const i = document.querySelector(s); return i && i.complete && i.naturalWidth > 0; }", square);
            var file = folder.At("square.png");
            await page.Locator(square).ScreenshotAsync(new() { Path = file });
            return Tool.Run("zbarimg", "--quiet", "--raw", file).TrimEnd('\n');
        }

        // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
        async Task LookAsync(string what)
        {
            if (Environment.GetEnvironmentVariable("LOOK") is { } look) await page.ScreenshotAsync(new() { Path = Path.Combine(look, $"{width}{language}-{what}.png"), FullPage = true });
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{what} scrolls sideways.");
            var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
            Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{what}: {v.Id}, {v.Help}, at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        }
    }

    [GeneratedRegex("^[2-9B-DF-HJKMNP-TV-Z]{6}$")]
    private static partial Regex Code();
}
