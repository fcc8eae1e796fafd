namespace Slantwise.Engines.Drawing.Figures;

/// <summary>A ball of a body as it is seen: the end of a limb, a corner of the trunk.</summary>
/// <param name="XMm">Its centre, from the left.</param>
/// <param name="YMm">Its centre, from the top.</param>
/// <param name="RadiusMm">More than 0.</param>
/// <param name="DepthMm">Its centre towards the viewer; only differences matter.</param>
public readonly record struct Round(double XMm, double YMm, double RadiusMm, double DepthMm)
{
    /// <summary>A ball on the way to another one.</summary>
    /// <param name="other">The other end.</param>
    /// <param name="atFraction">0 for this ball, 1 for the other.</param>
    public Round Towards(Round other, double atFraction) => new(
        XMm + atFraction * (other.XMm - XMm), YMm + atFraction * (other.YMm - YMm),
        RadiusMm + atFraction * (other.RadiusMm - RadiusMm), DepthMm + atFraction * (other.DepthMm - DepthMm));
}
