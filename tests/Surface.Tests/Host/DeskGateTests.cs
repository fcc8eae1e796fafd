using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class DeskGateTests(DemoFolder demo)
{
    [Fact]
    public async Task Desk_FromTheNetwork_IsClosedAndTheFloorIsNot()
    {
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", "0.0.0.0"]);
        using var network = Client(served, Network());
        using var here = Client(served, IPAddress.Loopback);
        foreach (var path in new[] { "/", "/classes", "/settings", "/_blazor/negotiate?negotiateVersion=1", "/lessons", "/tables/x.csv", "/print/lessons/x", "/no-such-page", "/floorplan" })
        {
            var answer = await network.GetAsync(path, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.Contains("href=\"/floor/\"", page);
            Assert.DoesNotContain("Pellinmoor", page);
        }
        Assert.Equal(HttpStatusCode.Unauthorized, (await network.GetAsync("/sync/bundle", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await network.GetAsync("/fonts/regular.ttf", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await here.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Theory]
    [InlineData("X-Forwarded-For", "203.0.113.7")]
    [InlineData("Forwarded", "for=203.0.113.7")]
    public async Task Desk_ThroughAProxyOnThisMachine_IsClosed(string header, string value)
    {
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", "0.0.0.0"]);
        using var here = Client(served, IPAddress.Loopback);
        here.DefaultRequestHeaders.Add(header, value);
        Assert.Equal(HttpStatusCode.Forbidden, (await here.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Desk_WithOpenDesk_AnswersEverybody()
    {
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", "0.0.0.0", "--open-desk"]);
        using var network = Client(served, Network());
        Assert.Equal(HttpStatusCode.OK, (await network.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task DeskKey_MadeOnTheDesk_OpensItOnceOnAnotherDevice()
    {
        using var folder = await demo.CopyAsync();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", "0.0.0.0"]);
        using var here = Client(served, IPAddress.Loopback);
        using var network = Client(served, Network());
        var settings = await here.GetStringAsync("/settings", TestContext.Current.CancellationToken);
        using var form = new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["_handler"] = "other-device",
            ["__RequestVerificationToken"] = AntiforgeryToken().Match(settings).Groups[1].Value,
        });
        var made = await (await here.PostAsync("/settings", form, TestContext.Current.CancellationToken)).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var link = WebUtility.HtmlDecode(KeyLink().Match(made).Value);

        var opened = await network.GetAsync(link, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, opened.StatusCode);
        var cookie = opened.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, (await network.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
        using var second = Client(served, Network());
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync(link, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
        second.DefaultRequestHeaders.Add("Cookie", "slantwise-desk=nonsense");
        Assert.Equal(HttpStatusCode.Forbidden, (await second.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Desk_BoundToOneAddressOfTheNetwork_IsReachedFromThisMachineAllTheSame()
    {
        using var folder = await demo.CopyAsync();
        var address = Network();
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", $"{address}"]);
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Client.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
        var desk = DeskAddress().Match(served.Error).Value;
        using var here = new HttpClient { BaseAddress = new Uri(desk) };
        Assert.Equal(HttpStatusCode.OK, (await here.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
    }

    private static HttpClient Client(ServedHost served, IPAddress address) =>
        new() { BaseAddress = new UriBuilder("http", address.ToString(), served.Address.Port).Uri, Timeout = HostProgram.Patience };

    private static IPAddress Network()
    {
        var found = NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .FirstOrDefault(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a));
        Assert.SkipWhen(found is null, "This machine has no address but its own: nothing comes from a network here.");
        return found!;
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex AntiforgeryToken();

    [GeneratedRegex("/desk-key\\?k=[^<\"]+")]
    private static partial Regex KeyLink();

    [GeneratedRegex("http://127\\.0\\.0\\.1:\\d+")]
    private static partial Regex DeskAddress();
}
