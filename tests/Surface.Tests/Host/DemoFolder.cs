using Slantwise.Surface.Tests.Host;

[assembly: AssemblyFixture(typeof(DemoFolder))]

namespace Slantwise.Surface.Tests.Host;

/// <summary>The demo school, loaded once by the real command; each test works on its own copy.</summary>
public sealed class DemoFolder : IDisposable
{
    private readonly TempFolder _original = new();
    private readonly Lazy<Task> _loading;

    public DemoFolder() => _loading = new Lazy<Task>(async () =>
    {
        var run = await HostProgram.RunAsync("demo", "load", "--data", _original.FullPath);
        Assert.True(run.ExitCode == 0, run.Error);
    });

    /// <summary>A copy to work on.</summary>
    public async Task<TempFolder> CopyAsync()
    {
        await _loading.Value;
        var copy = new TempFolder();
        foreach (var file in Directory.EnumerateFiles(_original.FullPath, "slantwise.db*")) File.Copy(file, copy.At(Path.GetFileName(file)));
        return copy;
    }

    public void Dispose() => _original.Dispose();
}
