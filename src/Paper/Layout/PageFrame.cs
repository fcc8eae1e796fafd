namespace Slantwise.Paper.Layout;

/// <summary>A page and the room inside its margins, in millimetres from its top left corner.</summary>
internal sealed record PageFrame(double WidthMm, double HeightMm)
{
    /// <summary>How long a millimetre of a form is where two stand beside each other: 1/√2, as each A size is of the next.</summary>
    public const double TwoUpFraction = 0.707;

    // Source: [CFR1193] "Large print" (a): one inch, and no line longer than six, for those who read with a magnifier.
    private const double LargePrintMarginMm = 25.4;
    private const double LargePrintLineMm = 6 * 25.4;

    /// <summary>The type its words are set in.</summary>
    public TypeScale Type { get; init; } = TypeScale.Usual;

    /// <summary>White on every side: what desk printers cannot reach, and room to hold the sheet.</summary>
    public double MarginMm { get; init; } = 15;

    /// <summary>The longest line.</summary>
    public double MostLineMm { get; init; } = double.PositiveInfinity;

    public double LeftMm => MarginMm;

    public double RightMm => Math.Min(WidthMm - MarginMm, LeftMm + MostLineMm);

    public double TopMm => MarginMm;

    public double BottomMm => HeightMm - MarginMm;

    public double RoomMm => RightMm - LeftMm;

    /// <summary>The page of a paper size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Paper is A4 or Letter.</exception>
    public static PageFrame Of(PaperSize size) => size switch
    {
        PaperSize.A4 => new(210, 297),
        PaperSize.Letter => new(8.5 * 25.4, 11 * 25.4),
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Paper is A4 or Letter."),
    };

    /// <summary>The form of a pupil's sheet: the page itself, or what fills half of it lying down.</summary>
    public static PageFrame Of(PaperOptions options)
    {
        var page = Of(options.Size);
        if (options.IsTwoUp) page = new(page.HeightMm / 2 / TwoUpFraction, page.WidthMm / TwoUpFraction);
        page = page with { Type = TypeScale.Of(options) };
        return options.IsLargePrint ? page with { MarginMm = LargePrintMarginMm, MostLineMm = LargePrintLineMm } : page;
    }
}
