using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Host.Studies;

/// <summary>A plain table that a study is read from. What is wrong with it is gathered, and named all at once before anything is computed.</summary>
internal sealed class StudyTable
{
    private static readonly string[] Yes = ["1", "true", "t", "yes", "y", "si", "verdadero", "v"], No = ["0", "false", "f", "no", "n", "falso"];

    private readonly CsvTable _table;
    private readonly CsvColumns<StudyColumn> _columns;
    private readonly List<string> _problems = [];

    private StudyTable(CsvTable table, IEnumerable<StudyColumn> known)
    {
        var findings = new List<Finding>(table.Findings);
        (_table, _columns) = (table, CsvColumns<StudyColumn>.Of(table, StudyHeadings.Known(known), findings));
        foreach (var twice in Unknown.GroupBy(CsvColumns<StudyColumn>.Folded).Select(g => g.ToList()).Where(g => g.Count > 1))
            findings.Add(new(FindingSeverity.Refused, "ColumnTwice", table.Place, twice[0], twice[1]));
        if (table.Headings.Count > 0 && table.Rows.Count == 0 && table.Findings.Count == 0) findings.Add(new(FindingSeverity.Refused, "TableHasNoRow", table.Place));
        _problems.AddRange(FindingLines.Of(findings));
    }

    public string Name => _table.Name;

    public IReadOnlyList<CsvRow> Rows => _table.Rows;

    public IReadOnlyList<string> Headings => _table.Headings;

    /// <summary>The headings that no column is known by.</summary>
    public IEnumerable<string> Unknown => _columns.Unknown.Where(h => h.Length > 0);

    private bool IsGuessed { get; init; }

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="known">The columns the command knows.</param>
    /// <param name="cancel">Ends the reading.</param>
    public static async Task<StudyTable> ReadAsync(string path, IReadOnlyList<StudyColumn> known, CancellationToken cancel)
    {
        var decoded = DecodedText.Read(await TextFile.ReadAsync(path, cancel));
        return new(CsvTable.Read(Path.GetFileName(path), decoded.Text), known) { IsGuessed = decoded.IsGuessed };
    }

    /// <summary>Where a column stands; none where the table lacks it.</summary>
    public int? PlaceOf(StudyColumn column) => _columns[column];

    public bool Has(StudyColumn column) => _columns.Has(column);

    /// <summary>What is to be pointed out though it was taken: columns nothing is made of, accents that were guessed.</summary>
    /// <param name="used">Headings that something was made of though no column is known by them.</param>
    public IEnumerable<Finding> Notes(params IEnumerable<string> used)
    {
        var folded = used.Select(CsvColumns<StudyColumn>.Folded).ToHashSet();
        var unused = Unknown.Where(h => !folded.Contains(CsvColumns<StudyColumn>.Folded(h))).Select(h => new Finding(FindingSeverity.Flagged, "ColumnNotUsed", _table.Place, h));
        return IsGuessed ? unused.Prepend(new(FindingSeverity.Flagged, "FileEncodingGuessed", _table.Place)) : unused;
    }

    /// <summary>Where a heading stands that no column is known by; none where the table lacks it.</summary>
    public int? PlaceOf(string heading)
    {
        var folded = CsvColumns<StudyColumn>.Folded(heading);
        for (var i = 0; i < Headings.Count; i++)
            if (CsvColumns<StudyColumn>.Folded(Headings[i]) == folded) return i;
        return null;
    }

    /// <summary>Refuses a table without headings, or one that lacks a column: its rows mean nothing, so it is said at once.</summary>
    public void Need(params ReadOnlySpan<StudyColumn> columns)
    {
        var isLacking = Headings.Count == 0;
        if (!isLacking)
        {
            foreach (var column in columns)
            {
                if (Has(column)) continue;
                Fault("StudyColumnMissing", Name, StudyHeadings.Of(column), string.Join(", ", Headings.Select(Shortened)));
                isLacking = true;
            }
        }
        if (isLacking) ThrowIfWrong();
    }

    /// <summary>The field of a column; empty where it is missing: no such column, an empty field, or R's NA.</summary>
    public string this[CsvRow row, StudyColumn column] => Field(row, _columns[column]);

    /// <summary>The field at a place; empty where it is missing.</summary>
    public static string Field(CsvRow row, int? place) => row[place] is "NA" ? "" : row[place];

    /// <summary>A name, which a row has to have.</summary>
    public string? Named(CsvRow row, StudyColumn column)
    {
        var text = this[row, column];
        if (text.Length > 0) return text;
        Wrong(row, column, StudyWords.Say("AllowedName"));
        return null;
    }

    /// <summary>Yes or no.</summary>
    public bool? Tick(CsvRow row, StudyColumn column)
    {
        var folded = CsvColumns<StudyColumn>.Folded(this[row, column]);
        if (Yes.Contains(folded)) return true;
        if (No.Contains(folded)) return false;
        Wrong(row, column, StudyWords.Say("AllowedTick"));
        return null;
    }

    /// <summary>A number in a column.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="isAllowed">Whether a number can stand there.</param>
    /// <param name="allowed">The same in words.</param>
    public double? Number(CsvRow row, StudyColumn column, Func<double, bool> isAllowed, string allowed) => Number(row, _columns[column], isAllowed, allowed);

    /// <summary>A number at a place.</summary>
    public double? Number(CsvRow row, int? place, Func<double, bool> isAllowed, string allowed)
    {
        if (TryNumber(Field(row, place), out var number) && isAllowed(number)) return number;
        Wrong(row, place, allowed);
        return null;
    }

    /// <summary>A whole number in a column.</summary>
    public int? Count(CsvRow row, StudyColumn column, int least, int most) =>
        (int?)Number(row, column, n => n >= least && n <= most && Math.Floor(n) == n, StudyWords.Say("AllowedCount", least, most));

    /// <summary>A finite number, with a decimal comma only where commas do not part fields.</summary>
    public bool TryNumber(string text, out double number)
    {
        if (_table.HasFreeComma && text.Count(c => c == ',') == 1 && !text.Contains('.')) text = text.Replace(',', '.');
        return double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
    }

    /// <summary>Where a column of a row is, in words.</summary>
    public string At(CsvRow row, StudyColumn column) => At(row, _columns[column]);

    /// <summary>Adds something wrong, in words.</summary>
    public void Fault(string key, params object?[] arguments) => _problems.Add(StudyWords.Say(key, arguments));

    /// <summary>Adds that a field cannot be what it is.</summary>
    public void Wrong(CsvRow row, StudyColumn column, string allowed) => Wrong(row, _columns[column], allowed);

    /// <summary>Adds that the field at a place cannot be what it is.</summary>
    public void Wrong(CsvRow row, int? place, string allowed)
    {
        var text = Field(row, place);
        if (text.Length == 0) Fault("StudyFieldMissing", At(row, place), allowed);
        else Fault("StudyFieldWrong", At(row, place), Shortened(text), allowed);
    }

    /// <summary>Says all that is wrong.</summary>
    public void ThrowIfWrong()
    {
        if (_problems.Count > 0) throw new Refusal(StudyWords.SayCount("StudyRefused", _problems.Count, Name)) { Details = _problems };
    }

    private static string At(CsvRow row, int? place) => row.At(place).ToString(null, CultureInfo.CurrentUICulture);

    // Long fields would push the sentence out of sight.
    private static string Shortened(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
