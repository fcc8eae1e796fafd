namespace Slantwise.Records.Entries;

/// <summary>One try.</summary>
/// <param name="IsSuccess">Whether the dose of the chosen level was reached.</param>
/// <param name="HeldS">How long it was held in seconds, 0 to 600; none where nobody timed it.</param>
public sealed record Trial(bool IsSuccess, double? HeldS = null) : EntryFact;
