namespace Slantwise.Desk.Pages.Scans;

/// <summary>How much may be sent at once, said on the page before and by the program when it is more.</summary>
/// <param name="MaxByteCount">Bytes of a file.</param>
/// <param name="MaxFileCount">Files at once.</param>
public sealed record UploadLimits(long MaxByteCount, int MaxFileCount)
{
    /// <summary>Millions of bytes of a file.</summary>
    public long MaxMegabyteCount => MaxByteCount / 1_000_000;
}
