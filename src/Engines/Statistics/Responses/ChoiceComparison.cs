namespace Slantwise.Engines.Statistics.Responses;

/// <summary>One thing read in two ways, with abilities integrated and with abilities conditioned away. Where pupils' choices carry no news of their own the two agree.</summary>
/// <param name="Slope">What is compared; none for the stretch of the levels' difficulties as a whole, 1 in the first reading.</param>
/// <param name="Index">Which of its kind.</param>
/// <param name="MarginalLogits">With abilities integrated.</param>
/// <param name="ConditionalLogits">With abilities conditioned away.</param>
/// <param name="JointSdLogits">The root of the sum of their squared standard errors. The two share their data, so this is on the wide side.</param>
public readonly record struct ChoiceComparison(CoefficientKind? Slope, int Index, double MarginalLogits, double ConditionalLogits, double JointSdLogits)
{
    /// <summary>How far apart they are, in joint standard errors; above 0 where the second reading is steeper.</summary>
    public double GapSd => (ConditionalLogits - MarginalLogits) / JointSdLogits;

    /// <summary>Whether they are further apart than two joint standard errors.</summary>
    public bool IsFar => Math.Abs(GapSd) > 2;
}
