namespace Slantwise.Paper.Cards;

/// <summary>A rectangle of a page, in millimetres from the page's top left corner.</summary>
internal sealed record Area(double LeftMm, double TopMm, double WidthMm, double HeightMm)
{
    public double RightMm => LeftMm + WidthMm;

    public double BottomMm => TopMm + HeightMm;

    public double MiddleMm => LeftMm + WidthMm / 2;

    /// <summary>The rectangle without a border of white.</summary>
    public Area Inside(double borderMm) => new(LeftMm + borderMm, TopMm + borderMm, WidthMm - 2 * borderMm, HeightMm - 2 * borderMm);
}
