namespace Slantwise.Records.Entries;

/// <summary>Whether a pupil was in the lesson.</summary>
/// <param name="IsPresent">In the lesson, or absent.</param>
public sealed record Presence(bool IsPresent) : EntryFact;
