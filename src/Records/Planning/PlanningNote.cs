namespace Slantwise.Records.Planning;

/// <summary>A sentence about something to know.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Sentence">In the reader's language.</param>
public sealed record PlanningNote(PlanningWarning Kind, string Sentence);
