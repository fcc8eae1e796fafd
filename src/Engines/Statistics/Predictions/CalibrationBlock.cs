namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>Neighbouring chances that are best read as one.</summary>
/// <param name="LowFraction">The smallest chance said in it.</param>
/// <param name="HighFraction">The largest.</param>
/// <param name="TrialCount">The trials, 1 or more.</param>
/// <param name="SuccessCount">Those that succeeded.</param>
public readonly record struct CalibrationBlock(double LowFraction, double HighFraction, int TrialCount, int SuccessCount)
{
    /// <summary>What these chances mean, by what came: the share that succeeded.</summary>
    public double ObservedFraction => (double)SuccessCount / TrialCount;

    /// <summary>5 trials or more.</summary>
    public bool IsShown => TrialCount >= 5;
}
