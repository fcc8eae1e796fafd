namespace Slantwise.Engines.Statistics;

/// <summary>A set, and where the pupil decided to go after it.</summary>
/// <param name="SuccessCount">0 to the number of trials.</param>
/// <param name="TrialCount">0 or more.</param>
/// <param name="Next">What was decided.</param>
public readonly record struct DecidedSet(int SuccessCount, int TrialCount, DecisionDirection Next);
