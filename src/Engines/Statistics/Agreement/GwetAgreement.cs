namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>Agreement beyond chance where chance means judging the unsure ones at random: AC1, or AC2 with weights. It does not fall when nearly all give one answer.</summary>
/// <remarks>Source: [Gwet2008] for AC1 and both errors; [Gwet2014] chapter 4 for AC2, from memory. Ranges are normal ones.</remarks>
public static class GwetAgreement
{
    /// <summary>AC1 or AC2 of a table.</summary>
    /// <param name="table">Any counts.</param>
    /// <param name="weights">Of as many categories; identity for AC1.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <returns>No value without a pair; 1 where all gave one answer throughout.</returns>
    /// <exception cref="ArgumentException">Weights of other categories than the table's.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static AgreementFigure Of(AgreementTable table, AgreementWeights weights, double confidenceFraction)
    {
        weights.Check(table);
        Confidence.Check(confidenceFraction);
        var (n, k) = ((double)table.PairCount, table.CategoryCount);
        var cautions = AgreementFigure.CautionsOf(table);
        if (n == 0) return new(0, null, null, null, null, null, null, cautions);

        var share = Enumerable.Range(0, k).Select(c => (table.FirstCount(c) + table.SecondCount(c)) / (2 * n)).ToArray();
        var random = RandomShare(weights);
        var chance = random * share.Sum(p => p * (1 - p));
        var agreed = 0.0;
        for (var i = 0; i < k; i++)
            for (var j = 0; j < k; j++)
                agreed += weights[i, j] * table[i, j] / n;
        var value = (agreed - chance) / (1 - chance);
        var (mean, sum) = (agreed - 2 * (1 - value) * chance, 0.0);
        for (var i = 0; i < k; i++)
            for (var j = 0; j < k; j++)
                sum += table[i, j] / n * Square(weights[i, j] - 2 * (1 - value) * random * (1 - (share[i] + share[j]) / 2) - mean);
        return AgreementFigure.Defined(table.PairCount, agreed, chance, sum / (n * Square(1 - chance)), confidenceFraction, cautions);
    }

    /// <summary>AC1 of several judges.</summary>
    /// <param name="ratings">What each thing got.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <returns>Its pairs are the things judged by two or more; no value without one, and no error for a single one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static AgreementFigure Of(RatingCounts ratings, double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        var judged = ratings.Things.Where(t => t.Sum() > 0).ToList();
        var paired = judged.Where(t => t.Sum() > 1).ToList();
        if (paired.Count == 0) return new(0, null, null, null, null, null, null, AgreementCautions.NoPairs);

        var k = ratings.CategoryCount;
        var share = Enumerable.Range(0, k).Select(c => judged.Average(t => (double)t[c] / t.Sum())).ToArray();
        var random = 1.0 / (k - 1);
        var chance = random * share.Sum(p => p * (1 - p));
        var agreed = paired.Average(RatingCounts.Agreement);
        var value = (agreed - chance) / (1 - chance);
        // What each thing adds, less how it moves the shares that chance is made of.
        var parts = judged.Select(t =>
        {
            var raters = (double)t.Sum();
            var own = raters > 1 ? (double)judged.Count / paired.Count * (RatingCounts.Agreement(t) - chance) / (1 - chance) : 0;
            var ownChance = random * Enumerable.Range(0, k).Sum(c => t[c] / raters * (1 - share[c]));
            return own - 2 * (1 - value) * (ownChance - chance) / (1 - chance);
        }).ToList();
        var n = judged.Count;
        var cautions = (n < 10 ? AgreementCautions.FewPairs : 0) | (share.Max() > .85 ? AgreementCautions.MostlyOneCategory : 0);
        if (n == 1) return new(1, agreed, chance, value, null, null, null, cautions);
        var variance = parts.Sum(p => Square(p - value)) / ((double)n * (n - 1));
        return AgreementFigure.Defined(paired.Count, agreed, chance, variance, confidenceFraction, cautions);
    }

    private static double RandomShare(AgreementWeights weights)
    {
        var (k, sum) = (weights.CategoryCount, 0.0);
        for (var i = 0; i < k; i++)
            for (var j = 0; j < k; j++)
                sum += weights[i, j];
        return sum / (k * (k - 1.0));
    }

    private static double Square(double x) => x * x;
}
