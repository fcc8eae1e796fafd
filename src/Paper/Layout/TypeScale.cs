using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.Layout;

/// <summary>The sizes of type on a page, and the white between letters, words and lines.</summary>
internal sealed record TypeScale
{
    /// <summary>What is usual: clear print of 12 pt for what a pupil reads. Lines a little wider apart than letters are tall, so that none can touch.</summary>
    public static TypeScale Usual { get; } = new() { SmallPt = 11, BodyPt = 12, LeadPt = 14, LongTitlePt = 20, TitlePt = 27, LeadingFraction = 1.25 };

    // Source: [CCLVI2011]: 18 pt or larger, headings larger than text, one and a half lines. One size for all that is read.
    private static readonly TypeScale Large = new() { SmallPt = 18, BodyPt = 18, LeadPt = 20, LongTitlePt = 22, TitlePt = 30, LeadingFraction = 1.5 };

    // Larger than usual on the form, so that on the paper, at .707, nothing is smaller than 9 pt.
    private static readonly TypeScale TwoUp = new() { SmallPt = 13, BodyPt = 13.5, LeadPt = 15.5, LongTitlePt = 21, TitlePt = 28, LeadingFraction = 1.25 };

    // Source: [BDA2018] "Headings and structure": between letters about 35 % of a letter's width, between words at least 3.5 times that, lines at 150 %.
    private const double LetterFraction = 0.35;
    private const double WordTimes = 3.5;
    private const double WideLeadingFraction = 1.5;

    /// <summary>Labels and what stands in the margin of attention. Nothing is smaller.</summary>
    public required double SmallPt { get; init; }

    /// <summary>What a pupil reads.</summary>
    public required double BodyPt { get; init; }

    /// <summary>The pupil's name, the purpose.</summary>
    public required double LeadPt { get; init; }

    /// <summary>The task's name where it takes more than a line.</summary>
    public required double LongTitlePt { get; init; }

    /// <summary>The task's name.</summary>
    public required double TitlePt { get; init; }

    /// <summary>From one baseline to the next, of the type size.</summary>
    public required double LeadingFraction { get; init; }

    /// <summary>Between letters and words.</summary>
    public TextSpacing Spacing { get; init; }

    /// <summary>White between letters and words of a size: titles are large enough without.</summary>
    public TextSpacing SpacingOf(double sizePt) => sizePt < LongTitlePt ? Spacing : default;

    public double LineMm(double sizePt) => sizePt * TextMeasure.MmPerPt * LeadingFraction;

    public double WidthMm(string text, double sizePt, TextWeight weight = TextWeight.Regular) => TextMeasure.WidthMm(text, sizePt, weight, SpacingOf(sizePt));

    public IReadOnlyList<string> Lines(string text, double widthMm, double sizePt, TextWeight weight = TextWeight.Regular) =>
        TextMeasure.Lines(text, widthMm, sizePt, weight, SpacingOf(sizePt));

    /// <summary>The type that is asked for.</summary>
    public static TypeScale Of(PaperOptions options)
    {
        var type = options.IsLargePrint ? Large : options.IsTwoUp ? TwoUp : Usual;
        return options.HasWideSpacing ? type with { Spacing = Wide(), LeadingFraction = WideLeadingFraction } : type;
    }

    // Of a letter's width: the mean over the alphabet.
    private static TextSpacing Wide()
    {
        const string Alphabet = "abcdefghijklmnopqrstuvwxyz";
        double Ems(string text) => TextMeasure.WidthMm(text, 1) / TextMeasure.MmPerPt;
        var letter = LetterFraction * Ems(Alphabet) / Alphabet.Length;
        // A space lies between two letters, so that the space between letters stands on both of its sides.
        return new TextSpacing(letter, Math.Max(0, WordTimes * letter - Ems(" ") - 2 * letter));
    }

    /// <summary>From the top of a line to its baseline.</summary>
    public static double AscentMm(double sizePt) => sizePt * TextMeasure.MmPerPt * TextMeasure.AscentFraction;

    /// <summary>From the middle of a digit or a capital to its baseline.</summary>
    public static double HalfCapitalMm(double sizePt) => sizePt * TextMeasure.MmPerPt * 0.334;
}
