using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>What is touched shows while the finger is still on it, and rests once it is lifted or has turned out to scroll.</summary>
public sealed class PressedTests(Browser browser)
{
    private const string Button = ".page-top .button";

    [Theory]
    [InlineData("touchEnd")]
    [InlineData("touchCancel")]
    public async Task Button_UnderAFinger_LooksPressedUntilItIsLifted(string end)
    {
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 412, Height = 800 }, HasTouch = true, IsMobile = true });
        await using var served = await ServedHost.StartAsync();
        await page.GotoAsync(new Uri(served.Address, "/floor/").ToString());
        var button = page.Locator(Button).First;
        await button.WaitForAsync();
        var box = (await button.BoundingBoxAsync())!;
        var wire = await page.Context.NewCDPSessionAsync(page);
        var resting = await LookAsync(page);

        // No finger rests for so long that the browser's own pressed state comes before this is asked: the attribute is there at once.
        await TouchAsync(wire, "touchStart", (box.X + (box.Width / 2), box.Y + (box.Height / 2)));
        Assert.True(await page.EvaluateAsync<bool>($"document.querySelector('{Button}').hasAttribute('data-pressed')"));
        Assert.NotEqual(resting, await LookAsync(page));
        await TouchAsync(wire, end);
        Assert.Equal(0, await page.EvaluateAsync<int>("document.querySelectorAll('[data-pressed]').length"));
    }

    private static Task<string> LookAsync(IPage page) => page.EvaluateAsync<string>($"getComputedStyle(document.querySelector('{Button}')).boxShadow");

    private static Task TouchAsync(ICDPSession wire, string type, (float X, float Y)? at = null) => wire.SendAsync("Input.dispatchTouchEvent", new()
    {
        ["type"] = type,
        ["touchPoints"] = at is var (x, y) ? new[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } : Array.Empty<object>(),
    });
}
