namespace Slantwise.Paper.Layout;

/// <summary>The four sizes of type on our paper, and the distance between their lines.</summary>
internal static class TypeScale
{
    /// <summary>Labels and what stands in the margin of attention. Nothing is smaller.</summary>
    public const double SmallPt = 11;

    /// <summary>What a pupil reads.</summary>
    public const double BodyPt = 12;

    /// <summary>The pupil's name, the purpose.</summary>
    public const double LeadPt = 14;

    /// <summary>The task's name.</summary>
    public const double TitlePt = 27;

    // Lines a little wider apart than the letters are tall with accents and tails, so that none can touch.
    private const double LeadingFraction = 1.25;

    public static double LineMm(double sizePt) => sizePt * TextMeasure.MmPerPt * LeadingFraction;

    /// <summary>From the top of a line to its baseline.</summary>
    public static double AscentMm(double sizePt) => sizePt * TextMeasure.MmPerPt * TextMeasure.AscentFraction;

    /// <summary>From the middle of a digit or a capital to its baseline.</summary>
    public static double HalfCapitalMm(double sizePt) => sizePt * TextMeasure.MmPerPt * 0.334;
}
