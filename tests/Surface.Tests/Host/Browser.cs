using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using Slantwise.Surface.Tests.Host;

[assembly: AssemblyFixture(typeof(Browser))]

namespace Slantwise.Surface.Tests.Host;

/// <summary>One headless Chromium for all tests that need one; where there is none, those tests are skipped with the reason.</summary>
public sealed class Browser : IAsyncDisposable
{
    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private readonly Lazy<Task<(IPlaywright Driver, IBrowser Chromium)>> _started = new(StartAsync);

    /// <summary>Where Chromium is: <c>SLANTWISE_CHROMIUM</c>, else where Debian puts it.</summary>
    public static string ExecutablePath => Environment.GetEnvironmentVariable("SLANTWISE_CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium";

    /// <summary>A new page in a context of its own (no cookies), or a skipped test.</summary>
    /// <param name="options">Size, language, colours; none for a laptop's.</param>
    public async Task<IPage> NewPageAsync(BrowserNewContextOptions? options = null)
    {
        Assert.SkipUnless(File.Exists(ExecutablePath), $"No Chromium at {ExecutablePath}: install it, or name one in SLANTWISE_CHROMIUM.");
        var (_, chromium) = await _started.Value;
        var context = await chromium.NewContextAsync(options ?? new() { ViewportSize = new() { Width = 1280, Height = 800 }, Locale = "en-GB" });
        return await context.NewPageAsync();
    }

    /// <summary>A browser process of its own on a profile that stays: what is opened again on it finds what was there.</summary>
    /// <param name="folder">The profile.</param>
    public async Task<IBrowserContext> OpenProfileAsync(string folder)
    {
        Assert.SkipUnless(File.Exists(ExecutablePath), $"No Chromium at {ExecutablePath}: install it, or name one in SLANTWISE_CHROMIUM.");
        var (driver, _) = await _started.Value;
        return await driver.Chromium.LaunchPersistentContextAsync(folder, new()
        {
            ExecutablePath = ExecutablePath, Args = Flags, ViewportSize = new() { Width = 412, Height = 800 }, Locale = "en-GB", HasTouch = true,
        });
    }

    /// <summary>Ends the browser of a profile on the spot, as an empty battery does.</summary>
    /// <param name="folder">The profile, open.</param>
    public static void KillProfile(string folder)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Whose browser a process is, is read from /proc.");
        var own = Directory.EnumerateDirectories("/proc").Select(Path.GetFileName).Where(name => int.TryParse(name, out _)).Where(id =>
        {
            try
            {
                var command = File.ReadAllText($"/proc/{id}/cmdline");
                return command.Contains($"--user-data-dir={folder}\0", StringComparison.Ordinal) && !command.Contains("--type=", StringComparison.Ordinal);
            }
            catch (IOException)
            {
                // It ended while this was read.
                return false;
            }
        }).ToList();
        using var process = Process.GetProcessById(int.Parse(Assert.Single(own)!, CultureInfo.InvariantCulture));
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
    }

    public async ValueTask DisposeAsync()
    {
        if (!_started.IsValueCreated) return;
        var (driver, chromium) = await _started.Value;
        await chromium.DisposeAsync();
        driver.Dispose();
    }

    private static async Task<(IPlaywright Driver, IBrowser Chromium)> StartAsync()
    {
        var driver = await Playwright.CreateAsync();
        return (driver, await driver.Chromium.LaunchAsync(new() { ExecutablePath = ExecutablePath, Args = Flags }));
    }
}
