using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slantwise.Surface.Tests.Floor;

/// <summary>Looks at screens as a critic does: barriers, what runs off the page, what is cut. With <c>SLANTWISE_PICTURES</c> it keeps a picture of each.</summary>
/// <param name="name">What the pictures of this round are called.</param>
internal sealed class FloorLooks(string name)
{
    private readonly List<string> _faults = [];
    private int _count;

    /// <summary>Looks at what a page shows.</summary>
    /// <remarks>Source: [WCAG22] as axe-core checks it; what it calls serious or critical is a fault here.</remarks>
    public async Task AtAsync(FloorPage page, string screen)
    {
        _count++;
        if (Environment.GetEnvironmentVariable("SLANTWISE_PICTURES") is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
            await page.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{_count:00}-{screen}.png") });
        }
        if (await page.AskAsync<bool>("document.documentElement.scrollWidth > innerWidth")) _faults.Add($"{screen}: scrolls sideways.");
        _faults.AddRange((await page.AskAsync<string[]>("walk.cut()")).Select(cut => $"{screen}: {cut}"));
        var serious = (await page.Page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical");
        _faults.AddRange(serious.Select(v => $"{screen}: {v.Id}, {v.Help}, at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}"));
    }

    /// <summary>Holds that nothing was found, on so many screens.</summary>
    public void AssertFine(int count)
    {
        Assert.True(_faults.Count == 0, string.Join("\n", _faults));
        Assert.Equal(count, _count);
    }
}
