namespace Slantwise.Engines.Statistics;

/// <summary>How long the best hold of a set was predicted to be, and how long it was.</summary>
/// <param name="PredictedS">0 or more.</param>
/// <param name="ResultS">0 or more.</param>
public readonly record struct HoldPrediction(double PredictedS, double ResultS);
