namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What is assumed about a coefficient before any data: about here, give or take this much.</summary>
/// <param name="MeanLogits">Where it is expected.</param>
/// <param name="SdLogits">How far off it may well be, more than 0.</param>
public readonly record struct NormalPrior(double MeanLogits, double SdLogits);
