using System.Globalization;
using Slantwise.Records.Words;

namespace Slantwise.Records.Checks;

/// <summary>A place in a file, so that a person can go there and look.</summary>
/// <param name="File">The file's name.</param>
/// <param name="LineNumber">The line, from 1, the header included; none for the file as a whole.</param>
/// <param name="Column">The column by its heading, or the path within a JSON line; none for the line as a whole.</param>
public sealed record FilePlace(string File, int? LineNumber = null, string? Column = null) : IFormattable
{
    /// <summary>The place in words: "pupils.csv, line 3, column “code”".</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">The reader's culture; English where it is none.</param>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        var culture = formatProvider as CultureInfo ?? CultureInfo.InvariantCulture;
        return this switch
        {
            { LineNumber: null } => File,
            { Column: null } => string.Format(culture, FindingWords.Text("PlaceLine", culture), File, LineNumber),
            _ => string.Format(culture, FindingWords.Text("PlaceColumn", culture), File, LineNumber, Column),
        };
    }

    /// <summary>The place in English words.</summary>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);
}
