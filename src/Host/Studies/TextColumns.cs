namespace Slantwise.Host.Studies;

/// <summary>Rows of cells under headings, aligned for a terminal.</summary>
/// <param name="nameCount">How many columns at the left hold names, which stand to the left; numbers stand to the right.</param>
/// <param name="headings">One for each column; a column without a heading holds words.</param>
internal sealed class TextColumns(int nameCount, params string[] headings)
{
    private readonly List<string[]> _rows = [headings];

    /// <summary>The lines, indented.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            var widths = headings.Select((_, c) => _rows.Max(r => r[c].Length)).ToArray();
            return _rows.Select(r => "  " + string.Join("  ", r.Select((cell, c) => c < nameCount || headings[c].Length == 0 ? cell.PadRight(widths[c]) : cell.PadLeft(widths[c]))).TrimEnd());
        }
    }

    public void Add(params string[] cells) => _rows.Add(cells);
}
