using System.Globalization;

namespace Slantwise.Paper;

/// <summary>How to print.</summary>
/// <param name="Size">The paper in the printer.</param>
/// <param name="Language">The language of our own words, dates and numbers; English where there is no translation. The teacher's words stay as written.</param>
public sealed record PaperOptions(PaperSize Size, CultureInfo Language)
{
    /// <summary>Task sheets to add with an empty line for the name, 0 to 60.</summary>
    public int SpareCount { get; init; }

    /// <summary>The number of the first sheet without a name, 1 to 9 999: sheets printed later for the same lesson go on from those before, so that none has the number of another.</summary>
    public int FirstSpareNumber { get; init; } = 1;

    /// <summary>Whether the printer turns the paper: then every pupil begins on a sheet of paper of their own, with an empty back where need be.</summary>
    public bool IsTwoSided { get; init; }

    /// <summary>Whether two pages stand beside each other on one, smaller. Not together with large print.</summary>
    public bool IsTwoUp { get; init; }

    /// <summary>Whether type is 18 pt and larger and fields are 7 mm and larger; it takes more pages. Not together with two pages beside each other.</summary>
    public bool IsLargePrint { get; init; }

    /// <summary>Whether letters, words and lines stand further apart, for readers with dyslexia.</summary>
    public bool HasWideSpacing { get; init; }

    /// <summary>Whether drawn signs stand beside numbers and words, for those who do not read yet.</summary>
    public bool HasSigns { get; init; }

    /// <summary>Whether the page is tinted like cream paper, for a screen. In a printer, use cream paper instead: then nothing is printed in the ground.</summary>
    public bool IsCream { get; init; }

    /// <summary>How large station cards are.</summary>
    public CardSize CardSize { get; init; } = CardSize.HalfPage;

    /// <summary>How large wall posters are.</summary>
    public PosterSize PosterSize { get; init; } = PosterSize.OnePage;

    /// <summary>Whether the lesson page says by first name who has other levels, beside how many do. Never why.</summary>
    public bool NamesOtherLevels { get; init; }
}
