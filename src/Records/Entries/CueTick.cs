namespace Slantwise.Records.Entries;

/// <summary>Whether a pupil saw a cue met in a set.</summary>
/// <param name="CueNumber">The cue, from 1 in the order of the sheet.</param>
/// <param name="IsTicked">Ticked, or left open on purpose.</param>
public sealed record CueTick(int CueNumber, bool IsTicked) : EntryFact;
