namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>Whether more was said before what succeeded than before what failed: order alone, however large the chances.</summary>
/// <param name="GammaFraction">Ordered pairs less reversed ones, of both, −1 to 1: 0 where predictions tell nothing apart; none where no success and failure had different chances.</param>
/// <param name="OrderedCount">Pairs of a success and a failure in which more was said of the success.</param>
/// <param name="ReversedCount">Pairs in which less was.</param>
/// <remarks>Source: [GoodmanKruskal1954].</remarks>
public readonly record struct GoodmanKruskalGamma(double? GammaFraction, long OrderedCount, long ReversedCount)
{
    /// <summary>The gamma of some predictions.</summary>
    /// <param name="forecasts">Any number, any order; confidence on any scale as a share of its top.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    public static GoodmanKruskalGamma Of(IReadOnlyList<Forecast> forecasts)
    {
        long ordered = 0, reversed = 0, successesBelow = 0, failuresBelow = 0;
        foreach (var tie in Forecast.Checked(forecasts).GroupBy(f => f.PredictedFraction).OrderBy(g => g.Key))
        {
            long successes = tie.Sum(f => (long)f.SuccessCount), failures = tie.Sum(f => (long)f.TrialCount) - successes;
            ordered += successes * failuresBelow;
            reversed += failures * successesBelow;
            (successesBelow, failuresBelow) = (successesBelow + successes, failuresBelow + failures);
        }
        return new(ordered + reversed == 0 ? null : (double)(ordered - reversed) / (ordered + reversed), ordered, reversed);
    }
}
