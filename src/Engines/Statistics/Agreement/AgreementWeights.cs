namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>How much two categories count as agreeing: 1 for the same, 0 for those farthest apart.</summary>
/// <remarks>Sources: [Cohen1968]; [FleissCohen1973] for the quadratic ones.</remarks>
public sealed class AgreementWeights
{
    private readonly double[,] weights;

    private AgreementWeights(double[,] weights) => this.weights = weights;

    /// <summary>The categories.</summary>
    public int CategoryCount => weights.GetLength(0);

    /// <summary>The weight of two categories, 0 to 1.</summary>
    /// <param name="first">From 0.</param>
    /// <param name="second">From 0.</param>
    public double this[int first, int second] => weights[first, second];

    /// <summary>Only the same category agrees.</summary>
    /// <param name="categoryCount">2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 categories.</exception>
    public static AgreementWeights Identity(int categoryCount) => Of(categoryCount, (i, j) => i == j ? 1 : 0);

    /// <summary>1 less the steps between, as a share of the most steps there are: for checks of three or four grades.</summary>
    /// <param name="categoryCount">2 or more, in order.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 categories.</exception>
    public static AgreementWeights Linear(int categoryCount) => Of(categoryCount, (i, j) => 1 - Math.Abs(i - j) / (categoryCount - 1.0));

    /// <summary>1 less the squared steps between, as a share of the most there are.</summary>
    /// <param name="categoryCount">2 or more, in order.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 categories.</exception>
    public static AgreementWeights Quadratic(int categoryCount) =>
        Of(categoryCount, (i, j) => 1 - (i - j) * (i - j) / ((categoryCount - 1.0) * (categoryCount - 1.0)));

    /// <summary>Weights from how bad each disagreement is.</summary>
    /// <param name="badness">Shape (k, k), k ≥ 2: 0 on the diagonal, 0 or more elsewhere, not all 0. Only their ratios matter.</param>
    /// <exception cref="ArgumentException">A table that is not square, has fewer than 2 categories, or is 0 throughout.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A badness that is negative, not finite, or not 0 on the diagonal.</exception>
    public static AgreementWeights OfDisagreements(double[,] badness)
    {
        if (badness.GetLength(0) != badness.GetLength(1) || badness.GetLength(0) < 2)
            throw new ArgumentException("A table has as many rows as columns, at least 2.", nameof(badness));
        for (var i = 0; i < badness.GetLength(0); i++)
        {
            for (var j = 0; j < badness.GetLength(0); j++)
                if (!(badness[i, j] >= 0 && double.IsFinite(badness[i, j])) || (i == j && badness[i, j] != 0))
                    throw new ArgumentOutOfRangeException(nameof(badness), badness[i, j], "A disagreement is as bad as 0 or more, and 0 where both agree.");
        }
        var worst = badness.Cast<double>().Max();
        if (worst == 0) throw new ArgumentException("Some disagreement has to count.", nameof(badness));
        return Of(badness.GetLength(0), (i, j) => 1 - badness[i, j] / worst);
    }

    internal void Check(AgreementTable table)
    {
        if (table.CategoryCount != CategoryCount)
            throw new ArgumentException($"Weights for {CategoryCount} categories do not fit a table of {table.CategoryCount}.", nameof(table));
    }

    private static AgreementWeights Of(int categoryCount, Func<int, int, double> weight)
    {
        if (categoryCount < 2) throw new ArgumentOutOfRangeException(nameof(categoryCount), categoryCount, "At least 2 categories can be told apart.");
        var weights = new double[categoryCount, categoryCount];
        for (var i = 0; i < categoryCount; i++)
            for (var j = 0; j < categoryCount; j++)
                weights[i, j] = weight(i, j);
        return new(weights);
    }
}
