using Slantwise.Records.Checks;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A scan after a person said something to it.</summary>
/// <param name="Scan">The scan as it stands now.</param>
/// <param name="Added">The entries this added.</param>
/// <param name="Findings">What to point out about them.</param>
public sealed record ReviewedScan(Scan Scan, IReadOnlyList<Entry> Added, IReadOnlyList<Finding> Findings);
