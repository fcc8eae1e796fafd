namespace Slantwise.Records.Entries;

/// <summary>What a pupil decided after a set.</summary>
/// <param name="Next">The same level, a harder or an easier one.</param>
/// <param name="Reason">Why, in the pupil's words; may be empty.</param>
public sealed record Decision(NextLevel Next, string Reason = "") : EntryFact;
