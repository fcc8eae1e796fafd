namespace Slantwise.Records.Scans.Intake;

/// <summary>A file to read sheets from.</summary>
/// <param name="Name">What to call it in sentences: its name without a folder.</param>
/// <param name="Open">Opens its bytes; called once a reading, and the reader closes what it gives.</param>
public sealed record ScanFile(string Name, Func<CancellationToken, Task<Stream>> Open)
{
    /// <summary>A file that is in memory already.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="bytes">All of it.</param>
    public static ScanFile Of(string name, byte[] bytes) => new(name, _ => Task.FromResult<Stream>(new MemoryStream(bytes, writable: false)));
}
