using CsvHelper;
using Slantwise.Records.Checks;

namespace Slantwise.Records.Csv;

/// <summary>A text file as a heading and rows. Rows that are no rows are findings.</summary>
/// <remarks>Source: [RFC4180] section 2; the separator may also be a semicolon or a tab, whichever the first line holds most of.</remarks>
public sealed class CsvTable
{
    private CsvTable(string name, IReadOnlyList<string> headings, IReadOnlyList<CsvRow> rows, IReadOnlyList<Finding> findings)
    {
        (Name, Headings, Rows, Findings) = (name, headings, rows, findings);
    }

    /// <summary>The file's name.</summary>
    public string Name { get; }

    /// <summary>The headings as written, trimmed. Empty for a file without a first line.</summary>
    public IReadOnlyList<string> Headings { get; }

    /// <summary>The rows with as many fields as headings and at least one that is not empty.</summary>
    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>What was wrong with the file as a table.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The file as a place.</summary>
    public FilePlace Place => new(Name);

    /// <summary>Whether fields are parted by something else than a comma, so that a comma in a number can only be a decimal one.</summary>
    public bool HasFreeComma { get; private init; }

    /// <summary>Reads a text.</summary>
    /// <param name="name">The file's name, for findings.</param>
    /// <param name="text">The whole text; may be empty, which is a finding.</param>
    public static CsvTable Read(string name, string text)
    {
        text = text.TrimStart('\uFEFF');
        var findings = new List<Finding>();
        var options = new CsvReaderOptions
        {
            Separator = text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) ? null : SeparatorOf(text),
            HasHeader = false,
            TrackLineNumbers = true,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            MalformedData = CsvMalformedDataHandling.Skip,
            OnMalformedRecord = bad => findings.Add(Finding.Refused(WordsOf(bad.Reason), new FilePlace(name, (int)bad.LineNumber))),
        };
        using var reader = CsvReader.FromText(text, options);
        string[]? headings = null;
        var rows = new List<CsvRow>();
        while (reader.Read())
        {
            var fields = new string[reader.FieldCount];
            for (var i = 0; i < fields.Length; i++) fields[i] = reader.GetString(i);
            if (fields.All(string.IsNullOrWhiteSpace)) continue;
            var line = (int)reader.LineNumber;
            if (fields.FirstOrDefault(TextCheck.HasControl) is { } strange)
            {
                findings.Add(Finding.Refused("FileHasControl", new FilePlace(name, line), TextCheck.Visible(strange)));
            }
            else if (headings is null) headings = fields.Select(f => f.Trim()).ToArray();
            else if (fields.Length != headings.Length) findings.Add(Finding.Refused("RowFieldCount", new FilePlace(name, line), fields.Length, headings.Length));
            else rows.Add(new CsvRow(name, line, headings, fields));
        }
        if (headings is null && findings.Count == 0) findings.Add(Finding.Refused("FileEmpty", new FilePlace(name)));
        var isTold = text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase);
        return new CsvTable(name, headings ?? [], rows, findings) { HasFreeComma = (isTold ? text[4..].FirstOrDefault(',') : SeparatorOf(text)) != ',' };
    }

    /// <summary>The separator of a text: of comma, semicolon and tab the one its first line with text holds most of outside quotes; a comma where it holds none.</summary>
    private static char SeparatorOf(string text)
    {
        int commas = 0, semicolons = 0, tabs = 0;
        var isQuoted = false;
        foreach (var c in text.AsSpan().TrimStart("\r\n"))
        {
            if (c == '"') isQuoted = !isQuoted;
            else if (isQuoted) continue;
            else if (c is '\r' or '\n') break;
            else if (c == ',') commas++;
            else if (c == ';') semicolons++;
            else if (c == '\t') tabs++;
        }
        if (semicolons > commas && semicolons >= tabs) return ';';
        return tabs > commas ? '\t' : ',';
    }

    private static string WordsOf(CsvMalformedReason reason) => reason switch
    {
        CsvMalformedReason.UnterminatedQuote => "RowQuoteOpen",
        CsvMalformedReason.TextAfterClosingQuote => "RowTextAfterQuote",
        _ => "RowQuoteStray",
    };
}
