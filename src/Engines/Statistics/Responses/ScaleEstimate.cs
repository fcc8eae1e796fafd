namespace Slantwise.Engines.Statistics.Responses;

/// <summary>A spread, estimated on its logarithm.</summary>
/// <param name="MedianLogits">As likely to be below as above; the likeliest value where nothing is assumed; the given one where it is fixed.</param>
/// <param name="LogSd">Standard deviation of its logarithm; 0 where it is fixed.</param>
public readonly record struct ScaleEstimate(double MedianLogits, double LogSd)
{
    /// <summary>Mean of its logarithm.</summary>
    public double MeanLogLogits => Math.Log(MedianLogits);

    /// <summary>Standard error of the spread itself, to first order.</summary>
    public double SdLogits => MedianLogits * LogSd;
}
