namespace Slantwise.Engines.Statistics;

/// <summary>One try at a hold.</summary>
/// <param name="HeldS">How long it was held, 0 or more; none where nobody timed it.</param>
/// <param name="DoseS">How long it had to be held, more than 0; none where that is not known.</param>
/// <param name="HasReachedDose">Whether it was held that long.</param>
public readonly record struct HoldAttempt(double? HeldS, double? DoseS, bool HasReachedDose);
