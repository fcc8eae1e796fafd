using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A scan with its pictures, saved together or not at all.</summary>
/// <param name="Scan">The scan, added or replaced by id.</param>
public sealed record ScanSave(Scan Scan)
{
    /// <summary>Pictures to keep with the scan, added or replaced by key.</summary>
    public IReadOnlyList<ScanPicture> Pictures { get; init; } = [];

    /// <summary>Pictures to keep beside the pupils' records, added or replaced by key.</summary>
    public IReadOnlyList<KeptPicture> Kept { get; init; } = [];

    /// <summary>Whether the scan's own pictures go first, the photo included: those named here come after.</summary>
    public bool ForgetsPictures { get; init; }
}
