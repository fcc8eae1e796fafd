namespace Slantwise.Surface.Tests.Host;

public sealed class BrowserTests(Browser browser)
{
    [Fact]
    public async Task Home_InABrowser_LoadsNothingFromElsewhereAndBreaksNoPolicy()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        var (foreign, complaints) = (new List<string>(), new List<string>());
        page.Request += (_, request) =>
        {
            if (new Uri(request.Url) is var to && to.Scheme != "data" && to.Authority != served.Address.Authority) foreign.Add(request.Url);
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error") complaints.Add(message.Text);
        };
        page.PageError += (_, error) => complaints.Add(error);

        var answer = await page.GotoAsync(served.Address.ToString());
        await page.WaitForLoadStateAsync(Microsoft.Playwright.LoadState.Load);

        Assert.True(answer!.Ok, $"{answer.Status}");
        Assert.False(string.IsNullOrWhiteSpace(await page.Locator("h1").First.TextContentAsync()));
        Assert.NotEqual("0px", await page.EvaluateAsync<string>("getComputedStyle(document.body).fontSize"));
        Assert.True(await page.EvaluateAsync<bool>("[...document.styleSheets].some(s => s.href && s.cssRules.length > 0)"), "The style sheet is loaded.");
        Assert.Empty(foreign);
        Assert.Empty(complaints);
    }

    [Fact]
    public async Task Serve_WithAPageOpen_EndsAllTheSame()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        var isLive = new TaskCompletionSource();
        page.WebSocket += (_, _) => isLive.TrySetResult();
        await page.GotoAsync(new Uri(served.Address, "/roster").ToString());
        await isLive.Task.WaitAsync(HostProgram.Patience, TestContext.Current.CancellationToken);
        Assert.Equal(0, await served.StopAsync());
    }
}
