using System.Globalization;

namespace Slantwise.Paper;

/// <summary>How to print.</summary>
/// <param name="Size">The paper in the printer.</param>
/// <param name="Language">The language of our own words, dates and numbers; English where there is no translation. The teacher's words stay as written.</param>
public sealed record PaperOptions(PaperSize Size, CultureInfo Language)
{
    /// <summary>Task sheets to add with an empty line for the name, 0 to 60.</summary>
    public int SpareCount { get; init; }
}
