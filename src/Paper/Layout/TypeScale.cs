using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.Layout;

/// <summary>The sizes of type on a page, and the white between letters, words and lines.</summary>
internal sealed record TypeScale
{
    /// <summary>What is usual: clear print of 12 pt for what a pupil reads. Lines a little wider apart than letters are tall, so that none can touch.</summary>
    public static TypeScale Usual { get; } = new() { SmallPt = 11, BodyPt = 12, LeadPt = 14, LongTitlePt = 20, TitlePt = 27, LeadingFraction = 1.25 };

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

    public double LineMm(double sizePt) => sizePt * TextMeasure.MmPerPt * LeadingFraction;

    public double WidthMm(string text, double sizePt, TextWeight weight = TextWeight.Regular) => TextMeasure.WidthMm(text, sizePt, weight, Spacing);

    public IReadOnlyList<string> Lines(string text, double widthMm, double sizePt, TextWeight weight = TextWeight.Regular) =>
        TextMeasure.Lines(text, widthMm, sizePt, weight, Spacing);

    /// <summary>From the top of a line to its baseline.</summary>
    public static double AscentMm(double sizePt) => sizePt * TextMeasure.MmPerPt * TextMeasure.AscentFraction;

    /// <summary>From the middle of a digit or a capital to its baseline.</summary>
    public static double HalfCapitalMm(double sizePt) => sizePt * TextMeasure.MmPerPt * 0.334;
}
