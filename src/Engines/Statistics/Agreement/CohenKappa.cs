namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>Agreement of two judges beyond what their own habits would give by chance.</summary>
/// <remarks>
/// The error is the one of weighted kappa under any agreement, not the smaller one under none.
/// Sources: [Cohen1960]; [Cohen1968]; [FleissCohenEveritt1969] for the error.
/// </remarks>
public static class CohenKappa
{
    /// <summary>Kappa of a table.</summary>
    /// <param name="table">Any counts.</param>
    /// <param name="weights">Of as many categories; identity for the plain kappa.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <returns>No value, and <see cref="AgreementCautions.OneCategory"/>, where no disagreement was possible.</returns>
    /// <exception cref="ArgumentException">Weights of other categories than the table's.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static AgreementFigure Of(AgreementTable table, AgreementWeights weights, double confidenceFraction)
    {
        weights.Check(table);
        Confidence.Check(confidenceFraction);
        var (n, k) = ((double)table.PairCount, table.CategoryCount);
        var cautions = AgreementFigure.CautionsOf(table);
        if (n == 0) return new(0, null, null, null, null, null, null, cautions);

        var first = Enumerable.Range(0, k).Select(c => table.FirstCount(c) / n).ToArray();
        var second = Enumerable.Range(0, k).Select(c => table.SecondCount(c) / n).ToArray();
        // How well each category does on average against the other judge's habits.
        var (rows, columns) = (new double[k], new double[k]);
        var (agreed, chance, canDiffer) = (0.0, 0.0, false);
        for (var i = 0; i < k; i++)
        {
            for (var j = 0; j < k; j++)
            {
                agreed += weights[i, j] * table[i, j] / n;
                chance += weights[i, j] * first[i] * second[j];
                rows[i] += weights[i, j] * second[j];
                columns[j] += weights[i, j] * first[i];
                canDiffer |= weights[i, j] < 1 && first[i] > 0 && second[j] > 0;
            }
        }
        if (!canDiffer) return new(table.PairCount, agreed, 1, null, null, null, null, cautions | AgreementCautions.OneCategory);

        // The published variance takes the squared mean from the mean square at the end; taken before squaring it keeps its digits.
        var (mean, sum) = (agreed * chance - 2 * chance + agreed, 0.0);
        for (var i = 0; i < k; i++)
            for (var j = 0; j < k; j++)
                sum += table[i, j] / n * Square(weights[i, j] * (1 - chance) - (rows[i] + columns[j]) * (1 - agreed) - mean);
        var variance = sum / (n * Square(Square(1 - chance)));
        return AgreementFigure.Defined(table.PairCount, agreed, chance, variance, confidenceFraction, cautions);
    }

    private static double Square(double x) => x * x;
}
