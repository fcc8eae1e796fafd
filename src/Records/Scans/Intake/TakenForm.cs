using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A form after it was taken in.</summary>
/// <param name="Scan">What was read, with what waits for a person.</param>
/// <param name="Added">The entries it added; on a dry run those it would add.</param>
/// <param name="Findings">What to point out about them.</param>
/// <param name="IsKept">Whether the scan is kept; on a dry run whether it would be. A page that belongs elsewhere, or of which nothing is known, is only said.</param>
/// <param name="IsAgain">Whether this page was read before.</param>
/// <param name="Crops">The boxes somebody has to look at, as pictures.</param>
public sealed record TakenForm(
    Scan Scan, IReadOnlyList<Entry> Added, IReadOnlyList<Finding> Findings, bool IsKept, bool IsAgain, IReadOnlyList<ScanPicture> Crops);
