namespace Slantwise.Records.Roster;

/// <summary>Something an import would change.</summary>
/// <param name="Kind">A class or a pupil.</param>
/// <param name="Label">What it is called now.</param>
/// <param name="Field">What changes.</param>
/// <param name="From">What it is now; none where it is empty.</param>
/// <param name="To">What it would be.</param>
public sealed record RosterChange(RosterItemKind Kind, string Label, RosterField Field, string? From, string? To);
