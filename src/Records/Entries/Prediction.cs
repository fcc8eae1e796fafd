namespace Slantwise.Records.Entries;

/// <summary>What a pupil predicted for a set, before the first trial: one of the two, as the sheet asks.</summary>
/// <param name="SuccessCount">How many trials of the set will succeed, 0 to the number of trials; none if a hold was predicted.</param>
/// <param name="HoldS">The best hold of the set in seconds, 0 to 600; none if a count was predicted.</param>
public sealed record Prediction(int? SuccessCount = null, double? HoldS = null) : EntryFact;
