namespace Slantwise.Records.Evidence;

/// <summary>One try as it holds now.</summary>
/// <param name="TrialNumber">Within its set, from 1.</param>
/// <param name="IsSuccess">Whether the dose was reached.</param>
/// <param name="HeldS">How long it was held; none where nobody timed it.</param>
/// <param name="EntryId">Its entry.</param>
public sealed record TrialEvidence(int TrialNumber, bool IsSuccess, double? HeldS, Guid EntryId);
