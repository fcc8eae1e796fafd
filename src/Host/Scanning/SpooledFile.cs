using Slantwise.Records.Scans.Intake;

namespace Slantwise.Host.Scanning;

/// <summary>A file that was sent: where it lies while it is read, or why it was not taken.</summary>
internal sealed record SpooledFile(string Name, string? Path, ScanRemark? Problem)
{
    /// <summary>The file for the reader.</summary>
    public ScanFile ToScanFile() => new(Name, _ => Task.FromResult<Stream>(new FileStream(Path!, FileMode.Open, FileAccess.Read, FileShare.Read)));
}
