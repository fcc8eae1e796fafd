namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>How often one judge gave a category and the other another, for each two. Tables of several pupils, lessons or schools add up.</summary>
public sealed class AgreementTable
{
    private readonly int[,] counts;

    private AgreementTable(int[,] counts) => this.counts = counts;

    /// <summary>The categories, 2 or more; ordered where the order means something, a tick after no tick.</summary>
    public int CategoryCount => counts.GetLength(0);

    /// <summary>All that was judged by both.</summary>
    public int PairCount => counts.Cast<int>().Sum();

    /// <summary>Those on which both gave the same.</summary>
    public int AgreedCount => Enumerable.Range(0, CategoryCount).Sum(c => counts[c, c]);

    /// <summary>How often the first judge gave one category and the second another.</summary>
    /// <param name="first">From 0.</param>
    /// <param name="second">From 0.</param>
    public int this[int first, int second] => counts[first, second];

    /// <summary>A table from its counts.</summary>
    /// <param name="counts">Shape (k, k), k ≥ 2, rows the first judge's categories, columns the second's; each 0 or more.</param>
    /// <exception cref="ArgumentException">A table that is not square or has fewer than 2 categories.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A negative count.</exception>
    public static AgreementTable Of(int[,] counts)
    {
        if (counts.GetLength(0) != counts.GetLength(1) || counts.GetLength(0) < 2)
            throw new ArgumentException("A table has as many rows as columns, at least 2.", nameof(counts));
        foreach (var count in counts)
            if (count < 0) throw new ArgumentOutOfRangeException(nameof(counts), count, "A count is 0 or more.");
        return new((int[,])counts.Clone());
    }

    /// <summary>A table from single judgements.</summary>
    /// <param name="categoryCount">2 or more.</param>
    /// <param name="pairs">Any number, any order; only what both judged.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 categories; a category outside them.</exception>
    public static AgreementTable Of(int categoryCount, IEnumerable<RatedPair> pairs)
    {
        if (categoryCount < 2) throw new ArgumentOutOfRangeException(nameof(categoryCount), categoryCount, "At least 2 categories can be told apart.");
        var counts = new int[categoryCount, categoryCount];
        foreach (var pair in pairs)
        {
            if (pair.First < 0 || pair.First >= categoryCount || pair.Second < 0 || pair.Second >= categoryCount)
                throw new ArgumentOutOfRangeException(nameof(pairs), pair, $"Categories are numbered from 0 to {categoryCount - 1}.");
            counts[pair.First, pair.Second]++;
        }
        return new(counts);
    }

    /// <summary>A table of ticks: not ticked, ticked.</summary>
    /// <param name="ticks">The pupil as the first judge, the teacher as the second.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative count.</exception>
    public static AgreementTable Of(TickAgreement ticks) =>
        Of(new[,] { { ticks.NeitherCount, ticks.OnlyTeacherCount }, { ticks.OnlyPupilCount, ticks.BothCount } });

    /// <summary>All tables in one.</summary>
    /// <param name="tables">At least one, all with the same categories.</param>
    /// <exception cref="ArgumentException">No table; tables with different categories.</exception>
    public static AgreementTable Sum(IReadOnlyList<AgreementTable> tables)
    {
        if (tables.Count == 0) throw new ArgumentException("At least one table is needed.", nameof(tables));
        if (tables.Any(t => t.CategoryCount != tables[0].CategoryCount)) throw new ArgumentException("Tables with different categories do not add up.", nameof(tables));
        var sum = new int[tables[0].CategoryCount, tables[0].CategoryCount];
        foreach (var table in tables) Add(sum, table, 1);
        return new(sum);
    }

    /// <summary>How often the first judge gave a category.</summary>
    /// <param name="category">From 0.</param>
    public int FirstCount(int category) => Enumerable.Range(0, CategoryCount).Sum(c => counts[category, c]);

    /// <summary>How often the second judge gave a category.</summary>
    /// <param name="category">From 0.</param>
    public int SecondCount(int category) => Enumerable.Range(0, CategoryCount).Sum(c => counts[c, category]);

    /// <summary>This table without one that was added into it.</summary>
    internal AgreementTable Without(AgreementTable part)
    {
        var rest = (int[,])counts.Clone();
        Add(rest, part, -1);
        return new(rest);
    }

    private static void Add(int[,] to, AgreementTable table, int times)
    {
        for (var i = 0; i < table.CategoryCount; i++)
            for (var j = 0; j < table.CategoryCount; j++)
                to[i, j] += times * table.counts[i, j];
    }
}
