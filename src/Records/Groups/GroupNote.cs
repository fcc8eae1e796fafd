namespace Slantwise.Records.Groups;

/// <summary>A sentence about something that is not as wished, and why.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Sentence">In the reader's language.</param>
public sealed record GroupNote(GroupNoteKind Kind, string Sentence);
