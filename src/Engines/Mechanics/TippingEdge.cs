namespace Slantwise.Engines.Mechanics;

/// <summary>One side of the base, seen from the centre of mass.</summary>
/// <param name="From">Where the side begins.</param>
/// <param name="To">Where it ends, the base on its left.</param>
/// <param name="MarginH">Distance of the line of gravity from the side, in statures; less than 0 outside it.</param>
/// <param name="TippingRad">How far the body may tilt towards this side before it tips over it; less than 0 where it has.</param>
/// <param name="EnergyToTipH">Work to tip over it per body weight: how far the centre must rise, in statures; 0 where it has tipped.</param>
/// <param name="IsPropped">Whether a wall stands on this side, so that the body leans on it and does not tip over.</param>
public readonly record struct TippingEdge(Point2 From, Point2 To, double MarginH, double TippingRad, double EnergyToTipH, bool IsPropped = false)
{
    /// <summary>The direction out of the base over this side, of length 1.</summary>
    public Point2 Outwards
    {
        get
        {
            var along = To - From;
            return 1 / along.LengthH * new Point2(along.YH, -along.XH);
        }
    }
}
