namespace Slantwise.Records.Scans.Intake;

/// <summary>A page of a file as it was read, before anybody asked what the marks mean.</summary>
/// <param name="File">The file's name.</param>
/// <param name="PageNumber">The page within it, from 1.</param>
/// <param name="Problem">Why the page could not be looked at; then there is no form and no picture.</param>
/// <param name="Forms">What was found on it: a form each, and a single one without a code where none was found.</param>
/// <param name="Picture">The page, to cut boxes from; only until the next page is asked for.</param>
/// <param name="Times">How long it took.</param>
public sealed record ReadPage(
    string File, int PageNumber, ScanRemark? Problem, IReadOnlyList<ReadForm> Forms, PagePicture? Picture, ReadTimes Times);
