namespace Slantwise.Records.Entries;

/// <summary>The level a pupil chose for a set, before the first trial.</summary>
/// <param name="LevelId">A level of the set's task on the lesson's sheet.</param>
public sealed record Choice(Guid LevelId) : EntryFact;
