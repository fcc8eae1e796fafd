using Slantwise.Host.Answers;

namespace Slantwise.Host;

/// <summary>A file that a command is given to read.</summary>
internal static class TextFile
{
    // A year of a district's entries is under 50 MB; more than this is a mistaken file.
    private const long MostBytes = 256L << 20;

    public static async Task<byte[]> ReadAsync(string path, CancellationToken cancel)
    {
        if (Directory.Exists(path)) throw Refusal.Of("SourceIsAFolder", path);
        if (!File.Exists(path)) throw Refusal.Of("NoFile", path);
        if (new FileInfo(path).Length > MostBytes) throw Refusal.Of("FileTooLong", path, MostBytes >> 20);
        return await File.ReadAllBytesAsync(path, cancel);
    }
}
