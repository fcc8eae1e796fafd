using Slantwise.Records.Checks;

namespace Slantwise.Records.Csv;

/// <summary>A row of a table, with its place.</summary>
internal sealed class CsvRow(string file, int lineNumber, string[] headings, string[] fields)
{
    public int LineNumber => lineNumber;

    public FilePlace Place => new(file, lineNumber);

    /// <summary>The field of a column without the white space around it; empty where there is no such column.</summary>
    public string this[int? column] => column is { } i ? fields[i].Trim() : "";

    /// <summary>The field of a column exactly as it stands.</summary>
    public string Raw(int? column) => column is { } i ? fields[i] : "";

    /// <summary>The place of a column in this row.</summary>
    public FilePlace At(int? column) => column is { } i ? new(file, lineNumber, headings[i]) : Place;
}
