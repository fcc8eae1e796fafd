using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Cards;

/// <summary>How large the parts of a card are to each other, and which sizes are tried, the largest first.</summary>
/// <param name="MostPt">The largest type for levels that is tried.</param>
/// <param name="TitleTimes">The title, as many times as large as the levels.</param>
/// <param name="CueTimes">The cues likewise: how many times is tried, the most first.</param>
/// <param name="LevelLeastPt">The least size of the levels for which cues may be more than the least many times as large.</param>
/// <param name="FigureFraction">The least height of a row of figures, of the card's height.</param>
internal sealed record CardScale(double MostPt, double TitleTimes, IReadOnlyList<double> CueTimes, double LevelLeastPt, double FigureFraction)
{
    /// <summary>Read where one stands and works, about 2 m: capitals of 2.9 mm, 12 pt, are just read there by usual sight.</summary>
    /// <remarks>Source: [ISO8596] for the 5 minutes of arc of such a letter.</remarks>
    public static CardScale Card { get; } = new(36, 1.6, [1.7, 1.5, 1.3, 1.15], 13, 0.17);

    /// <summary>Read across the hall, about 5 m: capitals of 7.3 mm, 31 pt. Cues lead, figures next.</summary>
    public static CardScale Poster { get; } = new(80, 1.5, [2.4, 2.1, 1.9, 1.7, 1.5, 1.3], 15, 0.2);

    /// <summary>Nothing on a card is smaller.</summary>
    public const double LeastPt = 11;

    private const double StepFraction = 0.96;

    // What stands on a wall needs no more white between lines than keeps them apart.
    private const double LeadingFraction = 1.2;

    public IEnumerable<double> SizesPt()
    {
        for (var size = MostPt; size > LeastPt; size *= StepFraction) yield return Math.Round(size, 1);
        yield return LeastPt;
    }

    /// <summary>A cue's number in its square.</summary>
    public static double NumberPt(double sizePt) => Math.Max(sizePt * 0.86, LeastPt);

    /// <summary>The type of cards: that of the page with lines closer together, unless more space was asked for.</summary>
    public static TypeScale TypeOf(PaperOptions options)
    {
        var type = TypeScale.Of(options with { IsLargePrint = false, IsTwoUp = false });
        return options.HasWideSpacing ? type : type with { LeadingFraction = LeadingFraction };
    }

    /// <summary>Whether every word stands on a line unbroken.</summary>
    public static bool HasWholeWords(TypeScale type, string text, double widthMm, double sizePt, TextWeight weight = TextWeight.Regular) =>
        text.Split(' ').All(word => type.WidthMm(word, sizePt, weight) <= widthMm);
}
