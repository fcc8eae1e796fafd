using System.Net;
using System.Net.Sockets;

namespace Slantwise.Surface.Tests.Host;

public sealed class ServeTests(DemoFolder demo)
{
    [Fact]
    public async Task Serve_OnTheFirstStart_LoadsTheDemoSchoolAndEndsOnRequest()
    {
        await using var served = await ServedHost.StartAsync();
        var home = await served.Client.GetAsync("/", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, home.StatusCode);
        Assert.Contains("Pellinmoor", await home.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(0, await served.StopAsync());
        Assert.DoesNotContain("warn", served.Error);
        Assert.DoesNotContain("fail", served.Error);
    }

    [Fact]
    public async Task Serve_OnTheSecondStart_KeepsTheData()
    {
        using var folder = await demo.CopyAsync();
        var before = await LessonsAsync(folder);
        await using (var first = await ServedHost.StartAsync(folder: folder.FullPath)) Assert.Equal(0, await first.StopAsync());
        await using (var second = await ServedHost.StartAsync(folder: folder.FullPath)) Assert.Equal(0, await second.StopAsync());
        Assert.Equal(before, await LessonsAsync(folder));
    }

    [Fact]
    public async Task Serve_WithoutTheDemo_StartsEmpty()
    {
        using var folder = new TempFolder();
        await using (var served = await ServedHost.StartAsync(isDemo: false, folder: folder.FullPath))
        {
            Assert.Equal(HttpStatusCode.OK, (await served.Client.GetAsync("/", TestContext.Current.CancellationToken)).StatusCode);
        }
        var run = await HostProgram.RunAsync("list", "lessons", "--data", folder.FullPath);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("There is no school yet", run.Error);
    }

    [Fact]
    public async Task Serve_ForAForeignHostName_Refuses()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(served, host: "evil.example"));
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(served, host: $"evil.example:{served.Address.Port}"));
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(served, host: "192.0.2.7"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(served, host: $"localhost:{served.Address.Port}"));
    }

    [Fact]
    public async Task Serve_ForARequestFromAnotherSite_Refuses()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        Assert.Equal(HttpStatusCode.Forbidden, await StatusAsync(served, origin: "http://evil.example"));
        Assert.Equal(HttpStatusCode.Forbidden, await StatusAsync(served, origin: "null"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(served, origin: served.Address.GetLeftPart(UriPartial.Authority)));
    }

    [Fact]
    public async Task Serve_EveryAnswer_KeepsToItself()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        foreach (var path in new[] { "/", "/fonts/regular.ttf", "/no-such-page", "/_content/Slantwise.Desk/desk.css" })
        {
            var answer = await served.Client.GetAsync(path, TestContext.Current.CancellationToken);
            Assert.StartsWith("default-src 'self'; script-src 'self'", answer.Headers.GetValues("Content-Security-Policy").First());
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.False(answer.Headers.Contains("Server"));
            Assert.Equal(path == "/no-such-page" ? HttpStatusCode.NotFound : HttpStatusCode.OK, answer.StatusCode);
        }
        Assert.Contains("no-store", (await served.Client.GetAsync("/", TestContext.Current.CancellationToken)).Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task Serve_OnATakenPort_SaysSo()
    {
        using var folder = new TempFolder();
        var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        var run = await HostProgram.RunAsync("serve", "--no-demo", "--port", $"{port}", "--data", folder.FullPath);
        taken.Stop();
        Assert.Equal(1, run.ExitCode);
        Assert.Contains($"Port {port} is taken", Assert.Single(run.ErrorLines));
    }

    [Fact]
    public async Task Serve_OnAFolderInUse_IsRefusedAndSoIsARestore()
    {
        using var folder = await demo.CopyAsync();
        var file = folder.At("copy.slantwise");
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        Assert.Equal(0, (await HostProgram.RunAsync("backup", file, "--data", folder.FullPath)).ExitCode);

        var second = await HostProgram.RunAsync("serve", "--port", "0", "--data", folder.FullPath);
        Assert.Equal(1, second.ExitCode);
        Assert.Contains("already running", Assert.Single(second.ErrorLines));
        var restore = await HostProgram.RunAsync("restore", file, "--data", folder.FullPath);
        Assert.Equal(1, restore.ExitCode);
        Assert.Contains("already running", Assert.Single(restore.ErrorLines));
    }

    [Fact]
    public async Task DemoLoad_IntoADemoSchool_IsRefusedAndChangesNothing()
    {
        using var folder = await demo.CopyAsync();
        var before = await LessonsAsync(folder);
        Assert.Equal(2, (await HostProgram.RunAsync("demo", "load", "--data", folder.FullPath)).ExitCode);
        Assert.Equal(before, await LessonsAsync(folder));
    }

    [Fact]
    public async Task DemoLoad_OnUnix_MakesFilesForTheirOwnerOnly()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows keeps permissions otherwise.");
        if (OperatingSystem.IsWindows()) return;
        using var folder = new TempFolder();
        Assert.Equal(0, (await HostProgram.RunAsync("demo", "load", "--data", folder.At("data"))).ExitCode);
        const UnixFileMode others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute
            | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;
        Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(folder.At("data")) & others);
        Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(Path.Combine(folder.At("data"), "slantwise.db")) & others);
    }

    private static async Task<string> LessonsAsync(TempFolder folder) =>
        (await HostProgram.RunAsync("list", "lessons", "--json", "--data", folder.FullPath)).Json().ToJsonString();

    private static async Task<HttpStatusCode> StatusAsync(ServedHost served, string? host = null, string? origin = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        if (host is not null) request.Headers.Host = host;
        if (origin is not null) request.Headers.Add("Origin", origin);
        return (await served.Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode;
    }
}
