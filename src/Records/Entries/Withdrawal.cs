namespace Slantwise.Records.Entries;

/// <summary>Takes the superseded entry back and puts nothing in its place.</summary>
public sealed record Withdrawal : EntryFact;
