namespace Slantwise.Records.Entries;

/// <summary>A short talk with a pupil during the lesson.</summary>
/// <param name="Topic">What it was about.</param>
/// <param name="Form">How the teacher spoke.</param>
/// <param name="Note">Anything to remember; may be empty.</param>
public sealed record Visit(VisitTopic Topic, VisitForm Form, string Note = "") : EntryFact;
