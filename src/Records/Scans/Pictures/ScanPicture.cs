namespace Slantwise.Records.Scans.Pictures;

/// <summary>A picture of a scan that is kept with it, until the scan is done.</summary>
/// <param name="SchoolId">The owning school.</param>
/// <param name="ScanId">The scan.</param>
/// <param name="PictureKey">An item's key, a written field's, or <see cref="Photo"/>.</param>
/// <param name="Bytes">A PNG in grey; the photo a JPEG in grey.</param>
public sealed record ScanPicture(Guid SchoolId, Guid ScanId, string PictureKey, byte[] Bytes)
{
    /// <summary>The key of the whole page.</summary>
    public const string Photo = "Photo";

    /// <summary>The key of what stands around an item's box: its set, or its pupil's row. It goes with the scan and is never kept beside a record.</summary>
    /// <param name="itemKey">The item's key.</param>
    public static string RowOf(string itemKey) => "Row-" + itemKey;
}
