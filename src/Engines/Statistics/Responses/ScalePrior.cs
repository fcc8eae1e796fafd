namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What is assumed about a standard deviation before any data: log-normal, so that it is never 0 and never negative.</summary>
/// <param name="MedianLogits">As likely to be below as above, more than 0.</param>
/// <param name="LogSd">Spread of its logarithm, more than 0: 0.3 is a factor of about 1.35 either way.</param>
/// <remarks>A prior that vanishes at 0 keeps an estimate from collapsing there. Source: [Chung2013] (from memory).</remarks>
public readonly record struct ScalePrior(double MedianLogits, double LogSd);
