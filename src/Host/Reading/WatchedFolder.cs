using System.Runtime.CompilerServices;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Reading;

/// <summary>The files of a folder, those that are there and those that come.</summary>
internal static class WatchedFolder
{
    // Looked at anew rather than told by the system: telling works on few of the drives that phones and scanners write to.
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private static readonly string[] Endings = [".jpg", ".jpeg", ".png", ".pdf"];

    /// <summary>A file by its path.</summary>
    public static ScanFile FileOf(string path) => new(
        Path.GetFileName(path), _ => Task.FromResult<Stream>(new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read)));

    /// <summary>Batches of files, until it is cancelled. A file is given once it has been the same size for two looks, so that none is read half copied.</summary>
    /// <param name="folder">The folder; not those within it.</param>
    /// <param name="first">Files to give first, wherever they are.</param>
    /// <param name="cancel">Ends it, without an error.</param>
    public static async IAsyncEnumerable<IReadOnlyList<ScanFile>> FilesAsync(string folder, IReadOnlyList<string> first, [EnumeratorCancellation] CancellationToken cancel)
    {
        if (first.Count > 0) yield return [.. first.Select(FileOf)];
        var given = new HashSet<(string, long, DateTime)>();
        var seen = new Dictionary<string, (long Length, DateTime WrittenAt)>();
        while (!cancel.IsCancellationRequested)
        {
            var ready = new List<string>();
            foreach (var path in Directory.EnumerateFiles(folder).Where(p => Endings.Contains(Path.GetExtension(p), StringComparer.OrdinalIgnoreCase)).Order(StringComparer.Ordinal))
            {
                var file = new FileInfo(path);
                if (!file.Exists) continue;
                var now = (file.Length, file.LastWriteTimeUtc);
                if (seen.TryGetValue(path, out var last) && last == now && given.Add((path, now.Length, now.LastWriteTimeUtc))) ready.Add(path);
                seen[path] = now;
            }
            if (ready.Count > 0) yield return [.. ready.Select(FileOf)];
            await Task.Delay(Pause, cancel).ContinueWith(_ => { }, TaskScheduler.Default);
        }
    }
}
