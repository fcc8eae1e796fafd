namespace Slantwise.Engines.Statistics;

/// <summary>How predicted holds compare with those that came.</summary>
/// <param name="SetCount">The sets compared, 1 or more.</param>
/// <param name="MeanErrorS">Mean of prediction minus result: above 0 longer holds were predicted than came.</param>
/// <param name="MeanAbsoluteErrorS">Mean distance between prediction and result; 0 is exact.</param>
/// <param name="Direction">On which side the mean error lies.</param>
/// <remarks>Source: [Kolovelonis2012] for bias and accuracy.</remarks>
public readonly record struct HoldPredictionBias(
    int SetCount, double MeanErrorS, double MeanAbsoluteErrorS, PredictionDirection Direction)
{
    /// <summary>The bias over some sets.</summary>
    /// <param name="sets">Any number, any order.</param>
    /// <param name="toleranceS">A mean error up to this, either way, is close; 0 or more.</param>
    /// <returns>None for no set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A hold that is negative or not finite; a negative tolerance.</exception>
    public static HoldPredictionBias? Of(IReadOnlyList<HoldPrediction> sets, double toleranceS)
    {
        if (!(toleranceS >= 0))
            throw new ArgumentOutOfRangeException(nameof(toleranceS), toleranceS, "A tolerance is 0 seconds or more.");
        foreach (var set in sets)
        {
            if (!(set.PredictedS >= 0 && double.IsFinite(set.PredictedS) && set.ResultS >= 0 && double.IsFinite(set.ResultS)))
                throw new ArgumentOutOfRangeException(nameof(sets), set, "A hold lasts 0 seconds or more and is a number.");
        }
        if (sets.Count == 0) return null;
        var mean = sets.Average(s => s.PredictedS - s.ResultS);
        return new(sets.Count, mean, sets.Average(s => Math.Abs(s.PredictedS - s.ResultS)), PredictionBias.DirectionOf(mean, toleranceS));
    }
}
