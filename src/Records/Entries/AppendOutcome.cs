namespace Slantwise.Records.Entries;

/// <summary>What appending a batch of entries did.</summary>
/// <param name="AddedIds">The entries that are new and now durable, in the order given.</param>
/// <param name="AlreadyKnownCount">How many were here before; taking them again changed nothing.</param>
public sealed record AppendOutcome(IReadOnlyList<Guid> AddedIds, int AlreadyKnownCount);
