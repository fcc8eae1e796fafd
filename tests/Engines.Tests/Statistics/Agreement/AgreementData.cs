using CsCheck;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

/// <summary>The tables several tests look at.</summary>
internal static class AgreementData
{
    // Source: [Gwet2019] vignettes of irrCAC: two abstractors, 100 charts, 3 categories.
    public static AgreementTable Abstractors { get; } = AgreementTable.Of(new[,] { { 13, 0, 0 }, { 0, 20, 7 }, { 0, 4, 56 } });

    // Source: [Cohen1968] as quoted in the help of R's psych.
    public static AgreementTable Cohen1968 { get; } = AgreementTable.Of(new[,] { { 88, 14, 18 }, { 10, 40, 10 }, { 2, 6, 12 } });

    // The kappa paradox in Gwet's example, from memory.
    public static AgreementTable Paradox { get; } = AgreementTable.Of(new[,] { { 118, 5 }, { 2, 0 } });

    /// <summary>Tables of two to four categories, some of their cells empty.</summary>
    public static Gen<AgreementTable> Any { get; } = Gen.Int[2, 4].SelectMany(k =>
        Gen.OneOf(Gen.Int[0, 30], Gen.Const(0)).Array[k * k].Select(cells => AgreementTable.Of(Square(k, (i, j) => cells[i * k + j]))));

    public static AgreementTable Known(string name)
    {
        var rows = GoldenTable.Rows("Agreement/inputs.csv").Where(r => r["table"] == name).ToList();
        return AgreementTable.Of(Square(rows.Max(r => r.Count("row")), (i, j) => rows.Single(r => r.Count("row") == i + 1 && r.Count("col") == j + 1).Count("count")));
    }

    public static AgreementWeights Weights(string name, int categories) => name switch
    {
        "identity" => AgreementWeights.Identity(categories),
        "linear" => AgreementWeights.Linear(categories),
        "quadratic" => AgreementWeights.Quadratic(categories),
        _ => throw new ArgumentException(name),
    };

    public static IEnumerable<RatedPair> Pairs(AgreementTable table) =>
        from i in Enumerable.Range(0, table.CategoryCount)
        from j in Enumerable.Range(0, table.CategoryCount)
        from _ in Enumerable.Range(0, table[i, j])
        select new RatedPair(i, j);

    public static AgreementTable Turned(AgreementTable table) => AgreementTable.Of(Square(table.CategoryCount, (i, j) => table[j, i]));

    public static int[,] Square(int size, Func<int, int, int> cell)
    {
        var cells = new int[size, size];
        for (var i = 0; i < size; i++)
            for (var j = 0; j < size; j++)
                cells[i, j] = cell(i, j);
        return cells;
    }
}
