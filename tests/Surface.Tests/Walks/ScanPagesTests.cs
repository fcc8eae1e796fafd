using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

public sealed class ScanPagesTests(Browser browser, DemoFolder demo)
{
    [Fact]
    public async Task Drop_AFileOnTheHomePage_IsSentAndSaidWhatBecameOfIt()
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout((float)HostProgram.Patience.TotalMilliseconds);
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        await page.GotoAsync(served.Address.ToString(), new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.EvaluateAsync("""
            () => {
              const data = new DataTransfer();
              data.items.add(new File(['no picture'], 'dropped.jpg', { type: 'image/jpeg' }));
              const at = document.querySelector('form[data-upload] .drop');
              at.dispatchEvent(new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true }));
              at.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
            }
            """);
        await page.WaitForURLAsync("**/scans?pile=*");
        Assert.Contains("dropped.jpg", await page.Locator(".pile-lines .unread").InnerTextAsync());
    }

    [Theory]
    [InlineData(320, 720, "es-ES", true, "de 6", "Deshacer")]
    [InlineData(360, 740, "en-GB", false, "of 6", "Take back")]
    [InlineData(1280, 800, "es-ES", false, "de 6", "Deshacer")]
    public async Task Pages_AtThisSizeAndLanguage_FitAndCanBeUsedByTouch(int width, int height, string language, bool isDark, string place, string undo)
    {
        var patience = (float)HostProgram.Patience.TotalMilliseconds;
        var page = await browser.NewPageAsync(new()
        {
            Locale = language, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light, ViewportSize = new() { Width = width, Height = height }, HasTouch = width < 600,
        });
        page.SetDefaultTimeout(patience);
        using var folder = await demo.CopyAsync();
        var pile = await ScanPile.MakeAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        // As a form without script sends it, from the home page: each sheet says where it belongs.
        using var form = new MultipartFormDataContent();
        foreach (var file in pile.Files) form.Add(new ByteArrayContent(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken)), "files", Path.GetFileName(file));
        var sent = await served.Client.PostAsync("/scans/upload", form, TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.SeeOther, sent.StatusCode);

        var name = $"{width}{language}{(isDark ? "dark" : "")}";
        await OpenAsync("/");
        await LookAsync("home");
        await OpenAsync(sent.Headers.Location!.ToString());
        Assert.Contains("notes.jpg", await page.Locator(".pile-lines .unread").InnerTextAsync());
        await LookAsync("pile");
        await page.Locator("#lessons a").First.ClickAsync();
        await page.Locator(".held select").WaitForAsync();
        await LookAsync("lesson");
        await page.Locator("a.big").ClickAsync();
        var review = page.Locator("#review[data-live=true]");
        await review.WaitForAsync();
        await LookAsync("review");
        Assert.Contains(place, await page.Locator(".place").InnerTextAsync());
        var box = await page.Locator(".review-answers button").First.BoundingBoxAsync();
        Assert.True(box!.Height >= 44 && box.Y + box.Height <= height, $"The answer lies at {box.Y} and is {box.Height} high on a page of {height}.");

        // A second tap at once falls on a card nobody has seen: it answers nothing.
        await page.Locator(".review-answers button").First.DblClickAsync();
        await Assertions.Expect(review).ToHaveAttributeAsync("data-open", "5", new() { Timeout = patience });
        await page.Locator("#review[data-storing=false]").WaitForAsync();
        await Assertions.Expect(review).ToHaveAttributeAsync("data-open", "5", new() { Timeout = patience });
        await page.GetByRole(AriaRole.Button, new() { Name = undo }).ClickAsync();
        await Assertions.Expect(review).ToHaveAttributeAsync("data-open", "6", new() { Timeout = patience });

        Task OpenAsync(string address) => page.GotoAsync(new Uri(served.Address, address).ToString(), new() { WaitUntil = WaitUntilState.NetworkIdle });

        // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here.
        async Task LookAsync(string what)
        {
            if (Environment.GetEnvironmentVariable("LOOK") is { } look) await page.ScreenshotAsync(new() { Path = Path.Combine(look, $"{name}-{what}.png"), FullPage = true });
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{what} scrolls sideways.");
            var serious = (await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").ToList();
            Assert.True(serious.Count == 0, string.Join("\n", serious.Select(v => $"{what}: {v.Id}, {v.Help}, at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
        }
    }
}
