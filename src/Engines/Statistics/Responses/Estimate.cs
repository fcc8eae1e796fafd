namespace Slantwise.Engines.Statistics.Responses;

/// <summary>A number of the model and how well it is known.</summary>
/// <param name="MeanLogits">Posterior mean.</param>
/// <param name="SdLogits">Posterior standard deviation, more than 0.</param>
/// <param name="DataShareFraction">How much of the doubt beforehand the data removed, 0 to 1: 1 − variance / variance beforehand. 1 where nothing was assumed.</param>
/// <param name="Cautions">What to mind.</param>
public readonly record struct Estimate(double MeanLogits, double SdLogits, double DataShareFraction, ResponseCaution Cautions);
