namespace Slantwise.Records.Scans.Intake;

/// <summary>Reads photographed and scanned pages: the desk asks for it here, the room with the pictures' libraries answers.</summary>
public interface IPageReader
{
    /// <summary>Reads the forms of a file, a page at a time, so that one page is in memory at once.</summary>
    /// <param name="file">A photo, or a scanned PDF of one page or several. Any bytes: what cannot be read is said, not thrown.</param>
    /// <param name="expected">Whose sheets, and which forms there are.</param>
    /// <param name="cancel">Stops between pages and between steps of one.</param>
    /// <returns>A page each, in the file's order; a single one with a problem where the file as a whole cannot be read. Never none.</returns>
    IAsyncEnumerable<ReadPage> ReadAsync(ScanFile file, ExpectedForms expected, CancellationToken cancel = default);
}
