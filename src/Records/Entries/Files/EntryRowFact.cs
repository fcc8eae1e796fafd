namespace Slantwise.Records.Entries.Files;

/// <summary>A fact that a row gives, with the column it came from.</summary>
internal readonly record struct EntryRowFact(EntryFact Fact, int? TrialNumber, int? Column);
