namespace Slantwise.Records.Entries;

/// <summary>Something the teacher wants to remember, about a pupil or about the lesson.</summary>
/// <param name="Text">In the teacher's words, 1 to 300 characters.</param>
public sealed record Note(string Text) : EntryFact;
