namespace Slantwise.Engines.Drawing.Figures;

/// <summary>The widths of a figure's lines, one number for the whole of it.</summary>
/// <param name="LineMm">The outline's width.</param>
/// <remarks>Our own style: the outline grows a little less than the figure does, and stays at a quarter of a millimetre in the smallest, so that it prints.</remarks>
public readonly record struct FigureInk(double LineMm)
{
    /// <summary>The finest outline.</summary>
    public const double FinestMm = .25;

    /// <summary>The outline for a scale.</summary>
    /// <param name="statureMm">How tall the standing body would be drawn.</param>
    public static FigureInk Of(double statureMm) => new(Math.Max(FinestMm, .022 * Math.Pow(statureMm, .75)));

    /// <summary>How far a wall's strokes reach behind it.</summary>
    public double WallMm => 4.7 * LineMm;

    internal double GapMm => .8 * LineMm;
}
