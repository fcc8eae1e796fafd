using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

/// <summary>The desk served by the real program on a free port, over a folder of its own or one that is given.</summary>
public sealed class ServedHost : IAsyncDisposable
{
    private readonly Process _process;
    private readonly TempFolder? _own;
    private readonly StringBuilder _error;

    private ServedHost(Process process, Uri address, string folder, TempFolder? own, StringBuilder error)
    {
        (_process, Address, Folder, _own, _error) = (process, address, folder, own, error);
        Client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = address, Timeout = HostProgram.Patience };
    }

    /// <summary>What to open in a browser.</summary>
    public Uri Address { get; }

    /// <summary>The data folder.</summary>
    public string Folder { get; }

    /// <summary>Asks the program, following no redirects.</summary>
    public HttpClient Client { get; }

    /// <summary>What the program said on standard error so far: empty for a quiet one.</summary>
    public string Error
    {
        get { lock (_error) return _error.ToString(); }
    }

    /// <summary>Starts the program and waits until it says where it is.</summary>
    /// <param name="isDemo">Whether an empty folder is filled with the demo school.</param>
    /// <param name="folder">The data folder; none for a new one that goes away afterwards.</param>
    /// <param name="language">The locale it runs in.</param>
    /// <param name="port">Where it listens; 0 for any free port.</param>
    /// <param name="program">Another program's file; none for the one beside the tests.</param>
    /// <param name="more">Further arguments of <c>serve</c>.</param>
    public static async Task<ServedHost> StartAsync(bool isDemo = true, string? folder = null, string language = "C.UTF-8", int port = 0, string? program = null, params IReadOnlyList<string> more)
    {
        var own = folder is null ? new TempFolder() : null;
        var data = folder ?? own!.At("data");
        string[] arguments = ["serve", "--port", port.ToString(CultureInfo.InvariantCulture), "--json", "--data", data, .. isDemo ? Array.Empty<string>() : ["--no-demo"], .. more];
        var process = HostProgram.StartFrom(program ?? HostProgram.Own, language, arguments);
        var error = new StringBuilder();
        process.ErrorDataReceived += (_, e) =>
        {
            lock (error) error.AppendLine(e.Data);
        };
        process.BeginErrorReadLine();
        var said = await process.StandardOutput.ReadLineAsync().WaitAsync(HostProgram.Patience);
        if (said is null)
        {
            await process.WaitForExitAsync();
            throw new InvalidOperationException($"serve ended with {process.ExitCode}: {error}");
        }
        return new ServedHost(process, new Uri(JsonNode.Parse(said)!["address"]!.GetValue<string>()), data, own, error);
    }

    /// <summary>Ends it on the spot, as a power cut does.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    /// <summary>Asks it to end, and waits for it.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> StopAsync()
    {
        HostProgram.Terminate(_process);
        await _process.WaitForExitAsync().WaitAsync(HostProgram.Patience);
        return _process.ExitCode;
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        _own?.Dispose();
    }
}
