using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class EveryPageTests(Browser browser)
{
    [Fact]
    public async Task Pages_FollowedFromHome_AreThereAndKeepToThisProgram()
    {
        var page = await browser.NewPageAsync();
        await using var served = await ServedHost.StartAsync();
        var complaints = new List<string>();
        var at = "/";
        page.Request += (_, request) =>
        {
            if (new Uri(request.Url) is var to && to.Scheme is not ("data" or "blob") && to.Authority != served.Address.Authority)
                complaints.Add($"{at} asks {request.Url}");
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error") complaints.Add($"{at}: {message.Text}");
        };
        page.PageError += (_, error) => complaints.Add($"{at}: {error}");

        // One page of each kind: what differs between two lessons' pages is their data, not their links.
        var seen = new HashSet<string> { "/" };
        var waiting = new Queue<string>(["/"]);
        while (waiting.TryDequeue(out var next))
        {
            at = next;
            var answer = await page.GotoAsync(new Uri(served.Address, next).ToString(), new() { WaitUntil = WaitUntilState.NetworkIdle });
            if (!answer!.Ok) complaints.Add($"{next} answered {answer.Status}");
            // Source: [WCAG22] as axe-core checks it; what it calls serious or critical is an error here. What is folded, and other widths, the walks look at.
            complaints.AddRange((await page.RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical")
                .Select(v => $"{next}: {v.Id}, {v.Help}, at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}"));
            foreach (var link in await page.EvaluateAsync<string[]>("[...document.querySelectorAll('a[href]')].map(a => a.getAttribute('href'))"))
            {
                if (!link.StartsWith('/') || link.StartsWith("/print/") || link.StartsWith("/tables/")) continue;
                var address = link.Split('#', '?')[0];
                if (seen.Add(Id().Replace(address, "{id}"))) waiting.Enqueue(address);
            }
        }

        Assert.Contains("/balance", seen);
        Assert.Contains("/balance/compare", seen);
        Assert.Contains("/balance/photo", seen);
        Assert.Contains("/classes/{id}/levels/{id}", seen);
        Assert.Contains("/halls", seen);
        Assert.Contains("/lessons/{id}/space", seen);
        Assert.Contains("/library", seen);
        foreach (var safety in new[] { "/lessons/{id}/risk", "/safety", "/safety/new", "/safety/{id}", "/safety/{id}/edit" }) Assert.Contains(safety, seen);
        Assert.Contains("/tasks/open", seen);
        Assert.Contains("/tasks/{id}/design", seen);
        Assert.Contains("/units/{id}/print", seen);
        Assert.Contains("/lessons/{id}/groups", seen);
        Assert.True(seen.Count >= 10, $"Only {string.Join(", ", seen)} can be reached from home.");
        Assert.True(complaints.Count == 0, string.Join("\n", complaints));
    }

    [GeneratedRegex("[0-9a-f]{8}-[0-9a-f-]{27}|(?<=^/library/)[a-z-]+")]
    private static partial Regex Id();
}
