using System.Globalization;
using System.Text;
using Slantwise.Records.Checks;

namespace Slantwise.Records.Csv;

/// <summary>Which column of a table is meant by which heading.</summary>
/// <typeparam name="TColumn">The columns that are understood.</typeparam>
public sealed class CsvColumns<TColumn>
    where TColumn : struct, Enum
{
    private readonly Dictionary<TColumn, int> _places = [];
    private readonly List<string> _unknown = [];

    private CsvColumns()
    {
    }

    /// <summary>Headings that are not understood, in the order of the file.</summary>
    public IReadOnlyList<string> Unknown => _unknown;

    /// <summary>The place of a column in a row; none where the table has no such column.</summary>
    /// <param name="column">The column.</param>
    public int? this[TColumn column] => _places.TryGetValue(column, out var place) ? place : null;

    /// <summary>Whether the table has a column.</summary>
    /// <param name="column">The column.</param>
    public bool Has(TColumn column) => _places.ContainsKey(column);

    /// <summary>Finds the columns of a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="aliases">The folded headings and what they mean.</param>
    /// <param name="findings">Takes a finding for each column given twice.</param>
    public static CsvColumns<TColumn> Of(CsvTable table, IReadOnlyDictionary<string, TColumn> aliases, List<Finding> findings)
    {
        var columns = new CsvColumns<TColumn>();
        for (var i = 0; i < table.Headings.Count; i++)
        {
            if (!aliases.TryGetValue(Folded(table.Headings[i]), out var column)) columns._unknown.Add(table.Headings[i]);
            else if (!columns._places.TryAdd(column, i))
            {
                findings.Add(Finding.Refused("ColumnTwice", table.Place, table.Headings[columns._places[column]], table.Headings[i]));
            }
        }
        return columns;
    }

    /// <summary>A heading without case, accents, spaces and punctuation: "Código del alumno" is "codigodelalumno".</summary>
    /// <param name="heading">As written.</param>
    public static string Folded(string heading)
    {
        var folded = new StringBuilder();
        foreach (var c in heading.Normalize(NormalizationForm.FormD))
        {
            if (char.IsLetterOrDigit(c) && CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark) folded.Append(char.ToLowerInvariant(c));
        }
        return folded.ToString();
    }
}
