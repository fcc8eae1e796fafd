namespace Slantwise.Records.Evidence.Reach;

/// <summary>A sentence about a reach.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Sentence">In the reader's language.</param>
public sealed record ReachNote(ReachNoteKind Kind, string Sentence);
