namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a pupil expected before the very first trial. Later predictions are coloured by outcomes and do not belong here.</summary>
/// <param name="Level">The level it was about, an index into the levels.</param>
/// <param name="ChanceFraction">The chance of success it comes to, 0 to 1: "4 of 5" is 0.8.</param>
public readonly record struct FirstPrediction(int Level, double ChanceFraction);
