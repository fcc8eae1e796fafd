namespace Slantwise.Records.Roster;

/// <summary>A membership an import would end. The pupil's evidence is kept.</summary>
/// <param name="Label">The pupil's name or code.</param>
/// <param name="Code">The pupil's code.</param>
/// <param name="ClassName">The class left.</param>
public sealed record RosterLeaving(string Label, string Code, string ClassName);
