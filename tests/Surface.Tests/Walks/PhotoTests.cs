using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SkiaSharp;
using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;
using Slantwise.Surface.Tests.Desk.Balance;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class PhotoTests(Browser browser, PhotoHost host) : IClassFixture<PhotoHost>
{
    [Fact]
    public async Task Walk_PictureFromAFile_NeverLeavesTheBrowser()
    {
        var page = await browser.NewPageAsync();
        var served = host.Served;
        var (frames, bodies, foreign) = (new List<byte[]>(), new List<byte[]>(), new List<string>());
        page.WebSocket += (_, socket) => socket.FrameSent += (_, frame) =>
        {
            lock (frames) frames.Add(frame.Binary ?? Encoding.UTF8.GetBytes(frame.Text ?? ""));
        };
        page.Request += (_, request) =>
        {
            if (request.PostDataBuffer is { } body) bodies.Add(body);
            if (new Uri(request.Url) is var to && to.Scheme is not ("blob" or "data") && to.Authority != served.Address.Authority) foreign.Add(request.Url);
        };
        await OpenAsync(page, served);
        var before = Kept(served.Folder);

        // Noise cannot be made smaller: to send it is to send its size.
        var picture = Noise(700, 900);
        Assert.True(picture.Length > 1_500_000, $"{picture.Length}");
        await page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "amelia-at-handstand.png", MimeType = "image/png", Buffer = picture });
        await MarkAsync(page, step => PhotoSampleMarks.Of("Handstand", false, step), touching: "Hands");
        Assert.Contains("The line of gravity falls", await page.Locator(".photo-answer").InnerTextAsync());
        var crown = page.Locator("[data-mark='Crown-Middle']");
        await crown.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.Locator(".photo-mark.last[data-mark='Crown-Middle']").WaitForAsync();

        var sent = frames.Sum(f => f.Length) + bodies.Sum(b => b.Length);
        Assert.NotEmpty(frames);
        Assert.True(sent < 20_000, $"{sent} bytes were sent of a picture of {picture.Length}.");
        foreach (var text in frames.Concat(bodies).Select(Encoding.Latin1.GetString))
        {
            Assert.DoesNotContain("amelia", text);
            Assert.DoesNotContain("blob:", text);
        }
        Assert.Empty(foreign);
        Assert.Equal(before, Kept(served.Folder));

        // Loading the page again finds nothing of it.
        await OpenAsync(page, served);
        Assert.True(await page.EvaluateAsync<bool>("[...document.querySelectorAll('.photo-stage img')].every(i => !i.getAttribute('src'))"));
        Assert.Equal(0, await page.Locator("[data-mark]").CountAsync());
        Assert.Equal(0, await page.EvaluateAsync<int>("localStorage.length + sessionStorage.length"));
        Assert.Equal(0, await page.EvaluateAsync<int>("caches.keys().then(k => k.length)"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Walk_DrawnHandstand_SameAnswerAsTheEngineWhicheverWayItIsShown(bool isUpsideDown)
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        await page.GetByRole(AriaRole.Button, new() { Name = "Try a drawing: handstand" }).ClickAsync();
        await page.Locator("[data-begin]").WaitForAsync();
        if (isUpsideDown) await page.GetByRole(AriaRole.Button, new() { Name = "Mark upside down" }).ClickAsync();
        await page.Locator($".photo-stage[data-turns='{(isUpsideDown ? 2 : 0)}']").WaitForAsync();
        var clicks = await MarkAsync(page, step =>
        {
            var (left, top) = PhotoSampleMarks.Of("Handstand", false, step);
            return isUpsideDown ? (1 - left, 1 - top) : (left, top);
        });

        // Eleven marks and the button before them, head down as on the feet.
        Assert.Equal(12, clicks);
        var expected = new PhotoSession().BalanceOf(PhotoSampleMarks.Marked("Handstand"))!;
        Assert.Equal(MarkedVerdict.TooClose, expected.Verdict);
        var answer = await page.Locator(".photo-answer").InnerTextAsync();
        Assert.Contains("Too close to call", answer);
        Assert.Contains($"falls {Math.Round(100 * expected.MarginH)} hundredths of a stature inside the base", answer);
        Assert.Contains("tip first over: heels of the hands", answer);
        Assert.Equal(1, await page.Locator(".photo-stage .gravity:not(.under)").CountAsync());
    }

    [Fact]
    public async Task Walk_TwoDrawnPictures_OneAnswer()
    {
        var page = await browser.NewPageAsync(new() { Locale = "en-GB", ReducedMotion = ReducedMotion.Reduce });
        await OpenAsync(page, host.Served);
        foreach (var isFront in new[] { false, true })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Try a drawing: on one foot" }).ClickAsync();
            await MarkAsync(page, step => PhotoSampleMarks.Of("OneFoot", isFront, step));
            if (!isFront) await page.GetByRole(AriaRole.Button, new() { Name = "Add a picture from the front" }).ClickAsync();
        }
        await page.GetByRole(AriaRole.Heading, new() { Name = "Both pictures together" }).WaitForAsync();
        Assert.Equal(1, await page.Locator(".photo-plan .area").CountAsync());
        await SeriousOnAsync(page, "both pictures");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the second picture" }).ClickAsync();
        await page.Locator(".photo-plan").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(15, await page.Locator("[data-mark]").CountAsync());
    }

    [Fact]
    public async Task Walk_KeysAlone_MarkMoveUndoAndGoOn()
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        await page.GetByRole(AriaRole.Button, new() { Name = "Try a drawing: handstand" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("[data-begin]").WaitForAsync();
        await page.Locator("[data-begin]").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("[data-place]:focus").WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        var crown = page.Locator("[data-mark='Crown-Middle']:focus");
        await crown.WaitForAsync();
        var at = await crown.BoundingBoxAsync();
        await page.Keyboard.PressAsync("Shift+ArrowDown");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Locator(".photo-loupe:not([hidden])").WaitForAsync();
        await StandsAtAsync(crown, at!.X + 1, at.Y + 10);
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("true", await page.EvaluateAsync<string>("'' + document.activeElement.hasAttribute('data-place')"));
        // Two moves and a mark, taken back one after the other.
        for (var i = 0; i < 3; i++) await page.Keyboard.PressAsync("Control+z");
        await page.Locator("[data-mark]").First.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    // What the program draws in answer to the first key may come after the second one was pressed: only where the mark ends counts.
    private static async Task StandsAtAsync(ILocator mark, double x, double y)
    {
        var box = await mark.BoundingBoxAsync();
        for (var look = 0; look < 600 && (Math.Abs(box!.X - x) > .6 || Math.Abs(box.Y - y) > .6); look++)
        {
            await Task.Delay(50);
            box = await mark.BoundingBoxAsync();
        }
        Assert.Equal(y, box!.Y, 0.6);
        Assert.Equal(x, box.X, 0.6);
    }

    [Fact]
    public async Task Walk_MarkDragged_AnswerFollowsAndUndoBringsItBack()
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        await page.GetByRole(AriaRole.Button, new() { Name = "Try a drawing: on one foot" }).ClickAsync();
        await MarkAsync(page, step => PhotoSampleMarks.Of("OneFoot", false, step));
        var verdict = page.Locator(".photo-verdict");
        Assert.Contains("Can be held still", await verdict.InnerTextAsync());
        // The toes to the heel: nothing is left of the base in front of the line of gravity.
        var (toe, heel) = (await MiddleAsync(page, "Toe-Left"), await MiddleAsync(page, "Heel-Left"));
        await page.Mouse.MoveAsync(toe.X, toe.Y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((toe.X + heel.X) / 2, toe.Y, new() { Steps = 5 });
        await page.Mouse.MoveAsync(heel.X + 6, heel.Y, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await page.Locator(".photo-verdict.NotHeld").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.Locator(".photo-verdict.Held").WaitForAsync();
        Assert.Equal(toe.X, (await MiddleAsync(page, "Toe-Left")).X, 1.0);
    }

    [Fact]
    public async Task Walk_FileThatIsNoPicture_SaysWhatToDo()
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        await page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "x.heic", MimeType = "image/heic", Buffer = [1, 2, 3] });
        await page.GetByText("Save the picture as JPEG or PNG").WaitForAsync();
    }

    [Fact]
    public async Task Walk_PictureDropped_IsShownAndAsksWhatTouches()
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        var dropped = await page.EvaluateHandleAsync(
            "svg => { const d = new DataTransfer(); d.items.add(new File([svg], 'x.svg', { type: 'image/svg+xml' })); return d; }",
            "<svg xmlns='http://www.w3.org/2000/svg' width='300' height='200'><circle r='50' cx='100' cy='100'/></svg>");
        await page.DispatchEventAsync("#photo", "drop", new { dataTransfer = dropped });
        await page.Locator(".photo-first").WaitForAsync();
        await page.Locator(".photo-stage[style*='1.5']").WaitForAsync();
    }

    [Fact]
    public async Task Walk_MarkedTwice_FirstMarksAreHiddenAndTheErrorIsMeasured()
    {
        var page = await browser.NewPageAsync();
        await OpenAsync(page, host.Served);
        await page.GetByRole(AriaRole.Button, new() { Name = "Try a drawing: handstand" }).ClickAsync();
        await MarkAsync(page, step => PhotoSampleMarks.Of("Handstand", false, step));
        await page.GetByRole(AriaRole.Button, new() { Name = "Mark everything again" }).ClickAsync();
        await page.Locator("[data-mark]").First.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        Assert.Equal(0, await page.Locator(".photo-stage .gravity").CountAsync());
        await MarkAsync(page, step =>
        {
            var (left, top) = PhotoSampleMarks.Of("Handstand", false, step);
            return (left + .012, top);
        });
        await page.Locator("#photo details").Last.EvaluateAsync("d => d.open = true");
        Assert.Contains("Measured from what you marked twice", await page.Locator("#photo-click-hint").InnerTextAsync());
        Assert.Equal(11, await page.Locator("[data-mark]").CountAsync());
    }

    [Theory]
    [InlineData(1440, false, "en-GB")]
    [InlineData(320, true, "es-ES")]
    public async Task Page_EveryState_FitsAndHasNothingSeriousForAxe(int widthPx, bool isDark, string language)
    {
        var page = await browser.NewPageAsync(new()
        {
            ViewportSize = new() { Width = widthPx, Height = 800 }, Locale = language, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
            // A button on its way from one colour to another has neither's contrast.
            ReducedMotion = ReducedMotion.Reduce,
        });
        await OpenAsync(page, host.Served);
        await SeriousOnAsync(page, "empty");
        await page.Locator(".photo-open button").Last.ClickAsync();
        await page.Locator("[data-begin]").WaitForAsync();
        await SeriousOnAsync(page, "first");
        await MarkAsync(page, step => PhotoSampleMarks.Of("Handstand", false, step), most: 4);
        await SeriousOnAsync(page, "marking");
        await MarkAsync(page, step => PhotoSampleMarks.Of("Handstand", false, step));
        await page.EvaluateAsync("document.querySelectorAll('#photo details').forEach(d => d.open = true)");
        await SeriousOnAsync(page, "answer");
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "The page is no wider than the screen.");
    }

    private static async Task OpenAsync(IPage page, ServedHost served)
    {
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        await page.GotoAsync(new Uri(served.Address, "/balance/photo").ToString());
        await page.Locator("#photo[data-live=true]").WaitForAsync();
    }

    // Answers what is asked first, then clicks where each step belongs, until nothing is asked any more.
    private static async Task<int> MarkAsync(
        IPage page, Func<PhotoStep, (double LeftFraction, double TopFraction)> place, string? touching = null, int most = int.MaxValue)
    {
        var clicks = 0;
        await page.Locator(".photo-first, .photo-prompt").First.WaitForAsync();
        if (await page.Locator(".photo-first").CountAsync() > 0)
        {
            if (touching is not null)
            {
                await page.GetByLabel("Feet", new() { Exact = true }).UncheckAsync();
                await page.GetByLabel(touching, new() { Exact = true }).CheckAsync();
            }
            await page.Locator("[data-begin]").ClickAsync();
            clicks++;
        }
        var prompt = page.Locator(".photo-prompt");
        await prompt.WaitForAsync();
        var stage = page.Locator(".photo-stage");
        for (var i = 0; i < most && await prompt.GetAttributeAsync("data-asked") is { Length: > 0 } key; i++)
        {
            var (left, top) = place(StepOf(key));
            var y = await page.EvaluateAsync<float>(
                "top => { const at = () => { const b = document.querySelector('.photo-stage').getBoundingClientRect(); return b.top + top * b.height; }; if (at() < 250 || at() > innerHeight - 20) scrollBy(0, at() - innerHeight * .7); return at(); }", top);
            var box = (await stage.BoundingBoxAsync())!;
            await page.Mouse.ClickAsync(box.X + (float)left * box.Width, y);
            clicks++;
            await page.Locator($"[data-mark='{key}']").WaitForAsync();
        }
        return clicks;
    }

    private static PhotoStep StepOf(string key) => key.Split('-') switch
    {
        [var part, var side, var end] => PhotoStep.Of(Enum.Parse<ContactPart>(part), Enum.Parse<Side>(side), int.Parse(end)),
        [var landmark, var side] => PhotoStep.Of(Enum.Parse<Landmark>(landmark), Enum.Parse<Side>(side)),
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "No such step."),
    };

    private static async Task<(float X, float Y)> MiddleAsync(IPage page, string key)
    {
        var box = (await page.Locator($"[data-mark='{key}']").BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    private static byte[] Noise(int widthPx, int heightPx)
    {
        using var bitmap = new SKBitmap(widthPx, heightPx);
        var chance = new Random(3);
        for (var x = 0; x < widthPx; x++)
            for (var y = 0; y < heightPx; y++)
                bitmap.SetPixel(x, y, new((byte)chance.Next(256), (byte)chance.Next(256), (byte)chance.Next(256)));
        return bitmap.Encode(SKEncodedImageFormat.Png, 100).ToArray();
    }

    // Every file of the data folder and its size.
    private static string[] Kept(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order().Select(f => $"{Path.GetFileName(f)} {new FileInfo(f).Length}")];

    // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
    private static async Task SeriousOnAsync(IPage page, string where)
    {
        var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
        Assert.True(serious.Count == 0, $"{where}:\n" + string.Join("\n", serious.Select(v => $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
