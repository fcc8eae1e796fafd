namespace Slantwise.Records.Scans.Intake;

/// <summary>A page of a file after it was taken in.</summary>
/// <param name="File">The file's name.</param>
/// <param name="PageNumber">The page of the file, from 1.</param>
/// <param name="Problem">Why the page could not be looked at; then there is no form.</param>
/// <param name="Forms">Its forms.</param>
/// <param name="Times">How long reading it took.</param>
public sealed record TakenPage(string File, int PageNumber, ScanRemark? Problem, IReadOnlyList<TakenForm> Forms, ReadTimes Times);
