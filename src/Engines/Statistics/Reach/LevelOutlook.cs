namespace Slantwise.Engines.Statistics.Reach;

/// <summary>What is believed of one pupil at one level: the logit of the chance of success.</summary>
/// <param name="MeanLogits">Its mean.</param>
/// <param name="SdLogits">Its standard deviation, 0 or more.</param>
public readonly record struct LevelOutlook(double MeanLogits, double SdLogits);
