namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>How long a segment is on the picture, beside the table of lengths.</summary>
/// <param name="From">Its first point.</param>
/// <param name="To">Its second point.</param>
/// <param name="Side">Left or right; Middle for the trunk and the head, or where one mark stands for both.</param>
/// <param name="LengthPx">On the picture.</param>
/// <param name="TableH">In the table.</param>
/// <param name="OfTableFraction">The marked length over the table's, at the picture's scale: under 1 where the segment points towards the camera or away from it.</param>
public sealed record MarkedLength(Landmark From, Landmark To, Side Side, double LengthPx, double TableH, double OfTableFraction)
{
    // Bodies differ from the table by about a tenth; a limb turned 40° out of the picture loses a quarter. Own estimate.
    /// <summary>Whether the segment is so short that the picture does not show it from the side.</summary>
    public bool IsForeshortened => OfTableFraction < .75;

    /// <summary>Whether it is so long that a mark may be misplaced.</summary>
    public bool IsOverlong => OfTableFraction > 1.33;
}
