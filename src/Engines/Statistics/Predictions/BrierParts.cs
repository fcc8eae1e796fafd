namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>What a Brier score is made of: reliability − resolution + uncertainty, and two more parts where chances are put into ranges.</summary>
/// <param name="BrierFraction">The score, 0 to 1; the sum of the parts exactly. This and the parts are none without a trial.</param>
/// <param name="ReliabilityFraction">How far the share that succeeded lies from the chance said, squared: 0 where "6 in 10" means 6 in 10.</param>
/// <param name="ResolutionFraction">How far these shares lie from the base rate, squared: 0 where predictions tell nothing apart.</param>
/// <param name="UncertaintyFraction">Base rate times the rest: what always saying the base rate would score.</param>
/// <param name="WithinVarianceFraction">How much chances differ inside their range; 0 without ranges. Added.</param>
/// <param name="WithinCovarianceFraction">How much these differences go with results; 0 without ranges. Taken away.</param>
/// <param name="Groups">The chances said, or their ranges, in order; ranges nobody used are left out.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Sources: [Murphy1973]; [Stephenson2008] for the two parts within ranges.</remarks>
public sealed record BrierParts(
    double? BrierFraction, double? ReliabilityFraction, double? ResolutionFraction, double? UncertaintyFraction,
    double? WithinVarianceFraction, double? WithinCovarianceFraction, IReadOnlyList<ForecastGroup> Groups, PredictionCautions Cautions)
{
    /// <summary>The parts by each chance that was said: exact, and right where few different ones were.</summary>
    /// <param name="forecasts">Any number, any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    public static BrierParts Of(IReadOnlyList<Forecast> forecasts) => By(Forecast.Checked(forecasts), f => f.PredictedFraction);

    /// <summary>The parts by ranges of chances.</summary>
    /// <param name="forecasts">Any number, any order.</param>
    /// <param name="inner">Where one range ends and the next begins, rising, between 0 and 1; a chance on an edge belongs to the upper range.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    /// <exception cref="ArgumentException">Edges that do not rise or lie outside 0 to 1.</exception>
    public static BrierParts Of(IReadOnlyList<Forecast> forecasts, IReadOnlyList<double> inner)
    {
        if (!inner.Prepend(0).Zip(inner.Append(1)).All(p => p.First < p.Second)) throw new ArgumentException("Edges rise between 0 and 1, both left out.", nameof(inner));
        return By(Forecast.Checked(forecasts), f => inner.Count(edge => edge <= f.PredictedFraction));
    }

    private static BrierParts By(List<Forecast> said, Func<Forecast, double> key)
    {
        var cautions = Forecast.CautionsOf(said);
        if (said.Count == 0) return new(null, null, null, null, null, null, [], cautions);

        double n = said.Sum(f => (long)f.TrialCount);
        var rate = said.Sum(f => (long)f.SuccessCount) / n;
        var groups = new List<ForecastGroup>();
        double reliability = 0, resolution = 0, variance = 0, covariance = 0, brier = 0;
        foreach (var members in said.GroupBy(key).OrderBy(g => g.Key).Select(g => g.ToList()))
        {
            var (trials, successes) = (members.Sum(f => f.TrialCount), members.Sum(f => f.SuccessCount));
            var first = members[0].PredictedFraction;
            // About the first of them, so that a group of one chance has that chance exactly and nothing within.
            var group = new ForecastGroup(first + members.Sum(f => f.TrialCount * (f.PredictedFraction - first)) / trials, trials, successes);
            groups.Add(group);
            reliability += trials / n * Square(group.PredictedFraction - group.ObservedFraction);
            resolution += trials / n * Square(group.ObservedFraction - rate);
            foreach (var f in members)
            {
                var from = f.PredictedFraction - group.PredictedFraction;
                variance += f.TrialCount / n * from * from;
                covariance += 2 * f.TrialCount / n * from * (f.Outcome - group.ObservedFraction);
                brier += f.TrialCount / n * (f.Outcome * Square(f.PredictedFraction - 1) + (1 - f.Outcome) * Square(f.PredictedFraction));
            }
        }
        return new(brier, reliability, resolution, rate * (1 - rate), variance, covariance, groups, cautions);
    }

    private static double Square(double x) => x * x;
}
