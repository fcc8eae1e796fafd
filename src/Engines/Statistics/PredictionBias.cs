namespace Slantwise.Engines.Statistics;

/// <summary>How predicted successes compare with those that came.</summary>
/// <param name="SetCount">The sets compared, 1 or more.</param>
/// <param name="MeanErrorCount">Mean of prediction minus result, in trials a set: above 0 more was predicted than came.</param>
/// <param name="MeanAbsoluteErrorCount">Mean distance between prediction and result, in trials a set; 0 is exact.</param>
/// <param name="ErrorFraction">All predictions minus all results, over all trials, -1 to 1: comparable where sets differ in length.</param>
/// <param name="Direction">On which side the mean error lies.</param>
/// <remarks>The names are those of calibration research. Source: [Kolovelonis2012] for bias and accuracy.</remarks>
public readonly record struct PredictionBias(
    int SetCount, double MeanErrorCount, double MeanAbsoluteErrorCount, double ErrorFraction, PredictionDirection Direction)
{
    /// <summary>The bias over some sets.</summary>
    /// <param name="sets">Any number, any order.</param>
    /// <param name="toleranceCount">A mean error up to this many trials, either way, is close; 0 or more.</param>
    /// <returns>None for no set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A set without a trial; a prediction or result outside 0 to its trials; a negative tolerance.</exception>
    public static PredictionBias? Of(IReadOnlyList<CountPrediction> sets, double toleranceCount)
    {
        if (!(toleranceCount >= 0))
            throw new ArgumentOutOfRangeException(nameof(toleranceCount), toleranceCount, "A tolerance is 0 trials or more.");
        foreach (var set in sets)
        {
            if (set.TrialCount < 1 || set.PredictedCount < 0 || set.PredictedCount > set.TrialCount || set.ResultCount < 0 || set.ResultCount > set.TrialCount)
                throw new ArgumentOutOfRangeException(nameof(sets), set, "A set has at least 1 trial, and prediction and result lie from 0 to its trials.");
        }
        if (sets.Count == 0) return null;

        long sum = 0, absolute = 0, trials = 0;
        foreach (var set in sets)
        {
            var error = set.PredictedCount - set.ResultCount;
            sum += error;
            absolute += Math.Abs(error);
            trials += set.TrialCount;
        }
        var mean = (double)sum / sets.Count;
        return new(sets.Count, mean, (double)absolute / sets.Count, (double)sum / trials, DirectionOf(mean, toleranceCount));
    }

    internal static PredictionDirection DirectionOf(double mean, double tolerance) =>
        mean > tolerance ? PredictionDirection.Over : mean < -tolerance ? PredictionDirection.Under : PredictionDirection.Close;
}
