using System.Globalization;
using System.Text;
using CsvHelper;
using Slantwise.Records.Entries.Files;

namespace Slantwise.Records.Evidence.Tables;

/// <summary>A table of evidence as a spreadsheet takes it.</summary>
/// <param name="Key">Its name in an address and a file: "self-checks".</param>
/// <param name="Headings">One a column, English and the same in every language, so that a file can be read by a program.</param>
/// <param name="Rows">As many cells as headings: texts, whole and broken numbers, days, truths; none for what is not known, never a 0.</param>
public sealed record EvidenceTable(string Key, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>The table as a file: comma-separated, a point before decimals, UTF-8 with the mark by which spreadsheets know it.</summary>
    /// <returns>The same bytes for the same table on every machine. A text that a spreadsheet would run as a formula has an apostrophe before it.</returns>
    public byte[] ToCsv()
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord([.. Headings]);
            foreach (var row in Rows) csv.WriteRecord([.. row.Select(Cell)]);
        }
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static string Cell(object? value) => value switch
    {
        null => "",
        string words => SpreadsheetText.Guarded(words),
        bool isTrue => isTrue ? "yes" : "no",
        // Beyond six digits no number here means anything.
        double number => Math.Round(number, 6).ToString("0.######", CultureInfo.InvariantCulture),
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => SpreadsheetText.Guarded(value.ToString() ?? ""),
    };
}
