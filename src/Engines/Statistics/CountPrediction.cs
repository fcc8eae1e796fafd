namespace Slantwise.Engines.Statistics;

/// <summary>How many trials of a set were predicted to succeed, and how many did.</summary>
/// <param name="PredictedCount">0 to the number of trials.</param>
/// <param name="ResultCount">0 to the number of trials.</param>
/// <param name="TrialCount">The trials of the set, 1 or more.</param>
public readonly record struct CountPrediction(int PredictedCount, int ResultCount, int TrialCount);
