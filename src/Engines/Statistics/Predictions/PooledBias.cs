namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>The bias of each pupil's predictions, and of the class they belong to.</summary>
/// <param name="Pupils">In the order given.</param>
/// <param name="ClassMeanLogits">The expected mean bias of pupils like these.</param>
/// <param name="ClassMeanSdLogits">Its standard deviation.</param>
/// <param name="BetweenLogits">The expected standard deviation between pupils.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>
/// logit(predicted share) = logit(model's chance) + bias of the pupil, a predicted count taken as so many of so many; biases are normal about the class's
/// mean. That mean is taken as normal(0, 1) before and the spread as half-normal(1); both are averaged over, so that few predictions
/// stay uncertain. Everything is a sum over a grid of biases a tenth of a logit apart, from −12 to 12: no search that could fail.
/// Source: [Gelman2013] chapter 5.
/// </remarks>
public sealed record PooledBias(
    IReadOnlyList<PupilBias> Pupils, double ClassMeanLogits, double ClassMeanSdLogits, double BetweenLogits, PredictionCautions Cautions)
{
    private const int SpreadCount = 17, MeanCount = 31, Rounds = 3;
    // Below a tenth of a logit pupils are as good as equal; and a normal law is summed exactly on this grid down to there.
    // The largest is where next to nothing of the half-normal is left, so that cutting there costs nothing.
    private const double SmallestSpread = .1, LargestSpread = 4.5, LargestGiven = 3;

    /// <summary>The biases of a class.</summary>
    /// <param name="pupils">For each pupil the sets; any number, none included.</param>
    /// <exception cref="ArgumentOutOfRangeException">A set without a trial; a prediction outside 0 to its trials; a model's chance that is not between 0 and 1.</exception>
    public static PooledBias Fit(IReadOnlyList<IReadOnlyList<ExpectedSet>> pupils)
    {
        foreach (var sets in pupils) ExpectedSet.Check(sets);
        var likelihoods = pupils.Select(BiasGrid.Likelihood).ToList();

        // The grid of means and log spreads is laid anew where the weight turned out to be, until it is fine enough for it.
        var (centre, width) = (0.0, 4.0);
        var (least, most) = (Math.Log(SmallestSpread), Math.Log(LargestSpread));
        BiasAverage? averaged = null;
        for (var round = 0; round < Rounds; round++)
        {
            averaged = new BiasAverage(likelihoods, round == Rounds - 1);
            var (step, logStep) = (2 * width / (MeanCount - 1), (most - least) / (SpreadCount - 1));
            for (var s = 0; s < SpreadCount; s++)
            {
                var (logSpread, spread) = (least + s * logStep, Math.Exp(least + s * logStep));
                for (var m = 0; m < MeanCount; m++)
                {
                    var mean = centre - width + m * step;
                    // Even steps in log spread carry weight in proportion to the spread; the first and last stand for half a step.
                    averaged.Add(mean, spread, -mean * mean / 2 - spread * spread / 2 + logSpread - (s is 0 or SpreadCount - 1 ? Math.Log(2) : 0));
                }
            }
            (centre, width) = (averaged.Mean, 5 * Math.Max(averaged.MeanSd, step / 2));
            var reach = 6 * Math.Max(averaged.LogSpreadSd, logStep / 2);
            (least, most) = (Math.Max(averaged.LogSpread - reach, Math.Log(SmallestSpread)), Math.Min(averaged.LogSpread + reach, Math.Log(LargestSpread)));
        }
        return Answer(pupils, averaged!);
    }

    /// <summary>The biases where the class's mean and spread are known, from a larger class or another year.</summary>
    /// <param name="pupils">For each pupil the sets; any number, none included.</param>
    /// <param name="meanLogits">The class's mean, −4 to 4.</param>
    /// <param name="betweenLogits">The standard deviation between pupils, 0.1 to 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">A set without a trial; a prediction outside 0 to its trials; a model's chance that is not between 0 and 1; a mean or spread outside its range.</exception>
    public static PooledBias Given(IReadOnlyList<IReadOnlyList<ExpectedSet>> pupils, double meanLogits, double betweenLogits)
    {
        foreach (var sets in pupils) ExpectedSet.Check(sets);
        if (!(meanLogits is >= -4 and <= 4)) throw new ArgumentOutOfRangeException(nameof(meanLogits), meanLogits, "A class's mean lies from −4 to 4 logits.");
        if (!(betweenLogits is >= SmallestSpread and <= LargestGiven))
            throw new ArgumentOutOfRangeException(nameof(betweenLogits), betweenLogits, "A spread between pupils lies from 0.1 to 3 logits.");
        var averaged = new BiasAverage(pupils.Select(BiasGrid.Likelihood).ToList(), true);
        averaged.Add(meanLogits, betweenLogits, 0);
        return Answer(pupils, averaged);
    }

    private static PooledBias Answer(IReadOnlyList<IReadOnlyList<ExpectedSet>> pupils, BiasAverage averaged)
    {
        var told = pupils.Count(p => p.Count > 0);
        var cautions = (told == 0 ? PredictionCautions.NoTrials : 0) | (told < 6 ? PredictionCautions.FewPupils : 0);
        return new(
            pupils.Select((sets, i) => BiasGrid.Read(averaged.Of(i), averaged.Unknown, sets.Count, sets.Sum(s => s.TrialCount))).ToArray(),
            averaged.Mean, averaged.MeanSd, averaged.Spread, cautions);
    }
}
