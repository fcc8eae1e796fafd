namespace Slantwise.Paper.Layout;

/// <summary>A page and the room inside its margins, in millimetres from its top left corner.</summary>
internal sealed record PageFrame(double WidthMm, double HeightMm)
{
    /// <summary>The type its words are set in.</summary>
    public TypeScale Type { get; init; } = TypeScale.Usual;

    /// <summary>White on every side: what desk printers cannot reach, and room to hold the sheet.</summary>
    public double MarginMm { get; init; } = 15;

    public double LeftMm => MarginMm;

    public double RightMm => WidthMm - MarginMm;

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
}
