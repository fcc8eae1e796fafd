namespace Slantwise.Paper.Reading;

/// <summary>How much a file may ask of the machine before it is put aside with a sentence.</summary>
public sealed record ReadingLimits
{
    /// <summary>Bytes of a file. A scanned class of 60 pages in colour takes about 60 million.</summary>
    public long MaxByteCount { get; init; } = 200_000_000;

    /// <summary>Pixels of a picture, read from its header before anything is unpacked: 64 million take 256 MB while they are.</summary>
    public long MaxPixelCount { get; init; } = 64_000_000;

    /// <summary>The longer side of the smallest picture worth a look: an A4 page at 2.7 pixels a millimetre.</summary>
    public int MinSidePx { get; init; } = 800;

    /// <summary>Pages of a PDF.</summary>
    public int MaxPageCount { get; init; } = 400;

    /// <summary>Time for a file. It is looked at between steps, the longest of which takes about a second.</summary>
    public TimeSpan MaxTime { get; init; } = TimeSpan.FromMinutes(5);

    /// <summary>The scans of a JPEG that is sent in scans: usual ones have about ten, and each costs a pass over the whole picture.</summary>
    public int MaxScanCount { get; init; } = 100;

    /// <summary>
    /// The longer side a picture is unpacked at first: it is halved while it stays above. A photo of 12 million pixels comes to 2000, which is 6 pixels a
    /// millimetre of an A4 page that fills it.
    /// </summary>
    public int UsualSidePx { get; init; } = 1800;

    /// <summary>The same where the first was not enough to find or trust a form.</summary>
    public int FineSidePx { get; init; } = 3600;
}
