namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>A chance that was said before some trials, and how they went: "4 of 5" or "eight in ten sure", then 3 of 5.</summary>
/// <param name="PredictedFraction">The chance said for each trial, 0 to 1; a predicted count is its share of the trials.</param>
/// <param name="SuccessCount">0 to the number of trials.</param>
/// <param name="TrialCount">0 or more; without a trial it is passed over.</param>
public readonly record struct Forecast(double PredictedFraction, int SuccessCount, int TrialCount)
{
    /// <summary>The share that succeeded; of no meaning without a trial.</summary>
    internal double Outcome => (double)SuccessCount / TrialCount;

    /// <summary>The one door that checks forecasts; those without a trial stay outside.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    internal static List<Forecast> Checked(IReadOnlyList<Forecast> forecasts)
    {
        foreach (var forecast in forecasts)
        {
            Counts.Check(forecast.SuccessCount, forecast.TrialCount);
            if (!(forecast.PredictedFraction is >= 0 and <= 1))
                throw new ArgumentOutOfRangeException(nameof(forecasts), forecast.PredictedFraction, "A predicted chance lies from 0 to 1.");
        }
        return forecasts.Where(f => f.TrialCount > 0).ToList();
    }

    internal static PredictionCautions CautionsOf(IReadOnlyCollection<Forecast> forecasts)
    {
        var (n, s) = (forecasts.Sum(f => (long)f.TrialCount), forecasts.Sum(f => (long)f.SuccessCount));
        if (n == 0) return PredictionCautions.NoTrials;
        return (n < 10 ? PredictionCautions.FewTrials : 0) | (s == 0 || s == n ? PredictionCautions.OneOutcome : 0);
    }
}
