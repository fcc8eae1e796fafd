namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>How many judges gave each thing each category. Who judged is not kept.</summary>
public sealed class RatingCounts
{
    private RatingCounts(IReadOnlyList<IReadOnlyList<int>> things, int categoryCount) => (Things, CategoryCount) = (things, categoryCount);

    /// <summary>The categories, 2 or more.</summary>
    public int CategoryCount { get; }

    /// <summary>For each thing the judges who gave each category.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Things { get; }

    /// <summary>Counts from a table.</summary>
    /// <param name="things">Any number, each with one count for each of the same 2 or more categories. Things may have different numbers of judges.</param>
    /// <param name="categoryCount">2 or more.</param>
    /// <exception cref="ArgumentException">A thing without a count for each category.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 categories; a negative count.</exception>
    public static RatingCounts Of(IReadOnlyList<IReadOnlyList<int>> things, int categoryCount)
    {
        if (categoryCount < 2) throw new ArgumentOutOfRangeException(nameof(categoryCount), categoryCount, "At least 2 categories can be told apart.");
        if (things.Any(t => t.Count != categoryCount)) throw new ArgumentException("Each thing has one count for each category.", nameof(things));
        if (things.Any(t => t.Any(c => c < 0))) throw new ArgumentOutOfRangeException(nameof(things), "A count is 0 or more.");
        return new(things.Select(t => (IReadOnlyList<int>)t.ToArray()).ToArray(), categoryCount);
    }

    /// <summary>The share of a thing's pairs of judges who agree.</summary>
    internal static double Agreement(IReadOnlyList<int> thing)
    {
        double raters = thing.Sum();
        return thing.Sum(c => c * (c - 1.0)) / (raters * (raters - 1));
    }
}
