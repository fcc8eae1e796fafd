namespace Slantwise.Records.Halls.Drawing;

/// <summary>The room a hall's drawing may take, and how large its words are.</summary>
/// <param name="WidthMm">The width of the drawing, 60 or more.</param>
/// <param name="MostHeightMm">The greatest height with scale bar and legend, 60 or more.</param>
/// <param name="WordsPt">The size of its words, 8 to 14; no word or number is smaller.</param>
public sealed record HallBox(double WidthMm, double MostHeightMm, double WordsPt)
{
    /// <summary>A screen's: a drawing about as wide as a page.</summary>
    public static HallBox Screen { get; } = new(180, 170, 9);

    /// <summary>One beside a form.</summary>
    public static HallBox Form { get; } = new(125, 130, 9);

    /// <summary>A small one in a list.</summary>
    public static HallBox Card { get; } = new(110, 90, 9);

    /// <summary>Throws where it is too small for a drawing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than 60 mm wide or high; words not of 8 to 14 points.</exception>
    internal void Check()
    {
        if (!(WidthMm >= 60 && MostHeightMm >= 60 && double.IsFinite(WidthMm + MostHeightMm)))
            throw new ArgumentOutOfRangeException(nameof(WidthMm), WidthMm, "A hall's drawing is at least 60 mm wide and high.");
        if (!(WordsPt is >= 8 and <= 14)) throw new ArgumentOutOfRangeException(nameof(WordsPt), WordsPt, "Words on a hall's drawing are 8 to 14 points.");
    }
}
