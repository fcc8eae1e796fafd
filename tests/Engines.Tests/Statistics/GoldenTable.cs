using System.Globalization;
using Slantwise.Engines.Tests.Rules;

namespace Slantwise.Engines.Tests.Statistics;

/// <summary>A table of known data or of another program's answers, beside the tests; its first lines say whose and by which command.</summary>
internal sealed class GoldenTable(IReadOnlyDictionary<string, string> row)
{
    /// <summary>The rows of a file below this folder.</summary>
    public static IReadOnlyList<GoldenTable> Rows(string path)
    {
        var lines = File.ReadAllLines(Path.Combine(Sources.Root, "tests/Engines.Tests/Statistics", path))
            .Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Replace("\"", "").Split(',')).ToList();
        Assert.True(lines.Count > 1, $"{path} has rows.");
        return lines.Skip(1).Select(l => new GoldenTable(lines[0].Zip(l).ToDictionary(p => p.First, p => p.Second))).ToList();
    }

    public string this[string column] => row[column];

    public int Count(string column) => int.Parse(row[column], CultureInfo.InvariantCulture);

    /// <summary>A number; none where the other program says NA or NaN.</summary>
    public double? Number(string column) => row[column] is "NA" or "NaN" ? null : double.Parse(row[column], CultureInfo.InvariantCulture);
}
