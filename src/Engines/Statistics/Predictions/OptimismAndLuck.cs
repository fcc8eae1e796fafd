namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>What a prediction had too much, apart from how lucky the trials were: prediction − result = optimism − luck.</summary>
/// <param name="SetCount">The sets, 1 or more.</param>
/// <param name="TrialCount">Their trials.</param>
/// <param name="OptimismFraction">Predicted less expected, of all trials, −1 to 1: above 0 more was predicted than was to be expected.</param>
/// <param name="LuckFraction">Came less expected, of all trials, −1 to 1: above 0 more came than was to be expected.</param>
/// <param name="UsualLuckFraction">How far luck goes on the usual day: its standard deviation if the model is right.</param>
/// <param name="SoFewFraction">How often so few successes or fewer come if the model is right.</param>
/// <param name="SoManyFraction">How often so many or more come.</param>
/// <remarks>
/// A pupil who predicted what was to be expected and had bad luck predicted well. The model's chances are taken for known and trials for independent;
/// the two chances are exact sums over the numbers of successes, so time grows with the square of the trials.
/// </remarks>
public readonly record struct OptimismAndLuck(
    int SetCount, int TrialCount, double OptimismFraction, double LuckFraction, double UsualLuckFraction, double SoFewFraction, double SoManyFraction)
{
    /// <summary>Both over some sets.</summary>
    /// <param name="sets">Any number, any order.</param>
    /// <returns>None for no set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A set without a trial; a prediction or result outside 0 to its trials; a model's chance that is not between 0 and 1.</exception>
    public static OptimismAndLuck? Of(IReadOnlyList<ExpectedSet> sets)
    {
        ExpectedSet.Check(sets);
        if (sets.Count == 0) return null;
        double n = sets.Sum(s => s.TrialCount);
        var expected = sets.Sum(s => s.TrialCount * s.ModelFraction);
        var came = sets.Sum(s => s.SuccessCount);
        var chances = ChancesOf(sets);
        return new(
            sets.Count, (int)n, (sets.Sum(s => s.PredictedCount) - expected) / n, (came - expected) / n,
            Math.Sqrt(sets.Sum(s => s.TrialCount * s.ModelFraction * (1 - s.ModelFraction))) / n,
            Math.Min(1, chances.Take(came + 1).Sum()), Math.Min(1, chances.Skip(came).Sum()));
    }

    // The chance of each number of successes, one trial after the other.
    private static double[] ChancesOf(IReadOnlyList<ExpectedSet> sets)
    {
        var chances = new double[sets.Sum(s => s.TrialCount) + 1];
        chances[0] = 1;
        var done = 0;
        foreach (var set in sets)
        {
            for (var trial = 0; trial < set.TrialCount; trial++)
            {
                done++;
                for (var k = done; k > 0; k--) chances[k] = chances[k] * (1 - set.ModelFraction) + chances[k - 1] * set.ModelFraction;
                chances[0] *= 1 - set.ModelFraction;
            }
        }
        return chances;
    }
}
