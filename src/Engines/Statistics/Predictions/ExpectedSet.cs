namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>A set that was predicted, done, and expected by a model of the pupil and the level.</summary>
/// <param name="PredictedCount">Successes the pupil predicted, 0 to the trials.</param>
/// <param name="SuccessCount">Those that came, 0 to the trials.</param>
/// <param name="TrialCount">The trials, 1 or more.</param>
/// <param name="ModelFraction">The model's chance of a success, between 0 and 1; best from what was known without this set, for a model that has seen the set expects what came.</param>
public readonly record struct ExpectedSet(int PredictedCount, int SuccessCount, int TrialCount, double ModelFraction)
{
    internal static void Check(IEnumerable<ExpectedSet> sets)
    {
        foreach (var set in sets)
        {
            if (set.TrialCount < 1 || set.PredictedCount < 0 || set.PredictedCount > set.TrialCount || set.SuccessCount < 0 || set.SuccessCount > set.TrialCount)
                throw new ArgumentOutOfRangeException(nameof(sets), set, "A set has at least 1 trial, and prediction and result lie from 0 to its trials.");
            if (!(set.ModelFraction is > 0 and < 1))
                throw new ArgumentOutOfRangeException(nameof(sets), set.ModelFraction, "A model's chance lies between 0 and 1, both left out.");
        }
    }
}
