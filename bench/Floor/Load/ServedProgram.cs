using System.Diagnostics;
using System.Text.Json.Nodes;

namespace Slantwise.Bench.Floor.Load;

/// <summary>The published program, serving.</summary>
internal sealed class ServedProgram : IDisposable
{
    private readonly Process _process;

    private ServedProgram(Process process, Uri address) => (_process, Address) = (process, address);

    public Uri Address { get; }

    /// <summary>What all its threads have used of the processors.</summary>
    public TimeSpan ProcessorTime
    {
        get
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
    }

    public (long Now, long Most) MemoryBytes
    {
        get
        {
            _process.Refresh();
            return (_process.WorkingSet64, _process.PeakWorkingSet64);
        }
    }

    public static async Task<ServedProgram> StartAsync(LoadOptions options)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var argument in (string[])[options.Program, "serve", "--no-demo", "--json", "--port", "0", "--data", options.Folder, .. options.Postgres is { } server ? ["--postgres", server] : Array.Empty<string>()])
            start.ArgumentList.Add(argument);
        var process = Process.Start(start)!;
        var said = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program ended at once.");
        return new ServedProgram(process, new Uri(JsonNode.Parse(said)!["address"]!.GetValue<string>()));
    }

    /// <summary>Ends it on the spot, as a power cut does.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }
}
