namespace Slantwise.Engines.Statistics.Holds;

/// <summary>The share still held just after a time at which some hold ended or was stopped.</summary>
/// <param name="TimeS">That time.</param>
/// <param name="AtRiskCount">Holds that lasted until then, those that stop at it included.</param>
/// <param name="FallenCount">Of these, how many ended at it.</param>
/// <param name="StoppedCount">How many were stopped at it while held.</param>
/// <param name="HeldFraction">The share still held after it, 0 to 1.</param>
/// <param name="ErrorFraction">Standard error of that share; none before the first fall and where nobody is left: there the data name no error.</param>
/// <param name="LowFraction">Lower end of the range, 0 to 1; none together with the error.</param>
/// <param name="HighFraction">Upper end of the range, 0 to 1.</param>
public readonly record struct SurvivalStep(
    double TimeS, int AtRiskCount, int FallenCount, int StoppedCount,
    double HeldFraction, double? ErrorFraction, double? LowFraction, double? HighFraction)
{
    /// <summary>Fewer than 10 holds lasted until here: drawn dashed.</summary>
    public bool IsThin => AtRiskCount < 10;
}
