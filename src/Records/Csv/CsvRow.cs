using Slantwise.Records.Checks;

namespace Slantwise.Records.Csv;

/// <summary>A row of a table, with its place.</summary>
public sealed class CsvRow
{
    private readonly string _file;
    private readonly int _lineNumber;
    private readonly string[] _headings, _fields;

    internal CsvRow(string file, int lineNumber, string[] headings, string[] fields) =>
        (_file, _lineNumber, _headings, _fields) = (file, lineNumber, headings, fields);

    /// <summary>The line, from 1, the headings included.</summary>
    public int LineNumber => _lineNumber;

    /// <summary>The place of the row.</summary>
    public FilePlace Place => new(_file, _lineNumber);

    /// <summary>The field of a column without the white space around it; empty where there is no such column.</summary>
    /// <param name="column">The place of the column, from 0; none where the table lacks it.</param>
    public string this[int? column] => column is { } i ? _fields[i].Trim() : "";

    /// <summary>The field of a column exactly as it stands.</summary>
    /// <param name="column">The place of the column, from 0; none where the table lacks it.</param>
    public string Raw(int? column) => column is { } i ? _fields[i] : "";

    /// <summary>The place of a column in this row.</summary>
    /// <param name="column">The place of the column, from 0; none where the table lacks it.</param>
    public FilePlace At(int? column) => column is { } i ? new(_file, _lineNumber, _headings[i]) : Place;
}
