namespace Slantwise.Surface.Tests.Host;

/// <summary>A folder of a test's own, gone afterwards.</summary>
public sealed class TempFolder : IDisposable
{
    public string FullPath { get; } = Directory.CreateTempSubdirectory("slantwise-test-").FullName;

    /// <summary>A path in it; nothing is made there.</summary>
    public string At(string name) => Path.Combine(FullPath, name);

    /// <summary>Writes a text file.</summary>
    /// <returns>Its path.</returns>
    public string Write(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public void Dispose() => Directory.Delete(FullPath, recursive: true);
}
