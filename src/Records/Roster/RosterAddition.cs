namespace Slantwise.Records.Roster;

/// <summary>Something an import would add.</summary>
/// <param name="Kind">A class, a pupil with a first membership, or a known pupil's membership of one more class.</param>
/// <param name="Label">The class's name, or the pupil's name or code.</param>
/// <param name="Code">The pupil's code; none for a class.</param>
/// <param name="ClassName">The class added, or joined.</param>
public sealed record RosterAddition(RosterItemKind Kind, string Label, string? Code, string ClassName);
