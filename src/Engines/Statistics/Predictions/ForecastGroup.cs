namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>The trials before which one chance, or one range of chances, was said.</summary>
/// <param name="PredictedFraction">The chance; the mean of them where it is a range.</param>
/// <param name="TrialCount">The trials, 1 or more.</param>
/// <param name="SuccessCount">Those that succeeded.</param>
public readonly record struct ForecastGroup(double PredictedFraction, int TrialCount, int SuccessCount)
{
    /// <summary>The share that succeeded.</summary>
    public double ObservedFraction => (double)SuccessCount / TrialCount;

    /// <summary>5 trials or more: fewer are not worth a point in a picture.</summary>
    public bool IsShown => TrialCount >= 5;

    /// <summary>The range for that share, every trial taken for independent.</summary>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public WilsonInterval Range(double confidenceFraction) => WilsonInterval.Of(SuccessCount, TrialCount, confidenceFraction)!.Value;
}
