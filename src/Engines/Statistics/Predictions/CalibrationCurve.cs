namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>What the chances said turned out to mean, by the best curve that never falls; and what is lost to miscalibration. No ranges have to be chosen.</summary>
/// <param name="BrierFraction">The Brier score: miscalibration − discrimination + uncertainty. This and the parts are none without a trial.</param>
/// <param name="MiscalibrationFraction">What saying the curve's chances instead would have saved, 0 or more.</param>
/// <param name="DiscriminationFraction">What the curve saves against always saying the base rate, 0 or more.</param>
/// <param name="UncertaintyFraction">What always saying the base rate would score.</param>
/// <param name="Blocks">The curve, rising; in each block the chances mean its share of successes.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Pool adjacent violators. Sources: [Ayer1955]; [Dimitriadis2021] for the parts.</remarks>
public sealed record CalibrationCurve(
    double? BrierFraction, double? MiscalibrationFraction, double? DiscriminationFraction, double? UncertaintyFraction,
    IReadOnlyList<CalibrationBlock> Blocks, PredictionCautions Cautions)
{
    /// <summary>The curve of some predictions.</summary>
    /// <param name="forecasts">Any number, any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    public static CalibrationCurve Of(IReadOnlyList<Forecast> forecasts)
    {
        var said = Forecast.Checked(forecasts);
        var cautions = Forecast.CautionsOf(said);
        if (said.Count == 0) return new(null, null, null, null, [], cautions);

        var blocks = new List<CalibrationBlock>();
        // The same chance said twice is one chance: ties are pooled before anything is compared.
        foreach (var tie in said.GroupBy(f => f.PredictedFraction).OrderBy(g => g.Key))
        {
            blocks.Add(new(tie.Key, tie.Key, tie.Sum(f => f.TrialCount), tie.Sum(f => f.SuccessCount)));
            while (blocks.Count > 1 && !Rises(blocks[^2], blocks[^1]))
            {
                var (below, above) = (blocks[^2], blocks[^1]);
                blocks.RemoveAt(blocks.Count - 1);
                blocks[^1] = new(below.LowFraction, above.HighFraction, below.TrialCount + above.TrialCount, below.SuccessCount + above.SuccessCount);
            }
        }

        double n = said.Sum(f => (long)f.TrialCount);
        var rate = said.Sum(f => (long)f.SuccessCount) / n;
        var brier = said.Sum(f => f.TrialCount / n * (f.Outcome * Square(f.PredictedFraction - 1) + (1 - f.Outcome) * Square(f.PredictedFraction)));
        var best = blocks.Sum(b => b.TrialCount / n * b.ObservedFraction * (1 - b.ObservedFraction));
        var always = rate * (1 - rate);
        // Both parts are 0 or more in the algebra; a rounding below is none.
        return new(brier, Math.Max(0, brier - best), Math.Max(0, always - best), always, blocks, cautions);
    }

    // In whole numbers: equal shares are pooled, and no rounding decides.
    private static bool Rises(CalibrationBlock below, CalibrationBlock above) =>
        (long)below.SuccessCount * above.TrialCount < (long)above.SuccessCount * below.TrialCount;

    private static double Square(double x) => x * x;
}
