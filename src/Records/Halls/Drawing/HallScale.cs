namespace Slantwise.Records.Halls.Drawing;

/// <summary>Where metres on the floor are drawn: the front wall below, the left wall on the left.</summary>
/// <param name="MmPerM">How long a metre is drawn.</param>
/// <param name="LeftMm">Where the left wall is drawn.</param>
/// <param name="TopMm">Where the back wall is drawn.</param>
/// <param name="DepthM">From the front wall to the back one.</param>
public sealed record HallScale(double MmPerM, double LeftMm, double TopMm, double DepthM)
{
    /// <summary>From the left of the drawing.</summary>
    /// <param name="xM">From the left wall.</param>
    public double XMm(double xM) => LeftMm + xM * MmPerM;

    /// <summary>From the top of the drawing.</summary>
    /// <param name="yM">From the front wall.</param>
    public double YMm(double yM) => TopMm + (DepthM - yM) * MmPerM;
}
