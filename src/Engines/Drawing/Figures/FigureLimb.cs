namespace Slantwise.Engines.Drawing.Figures;

/// <summary>An arm or a leg.</summary>
/// <param name="Upper">From the body to the elbow or knee, 2 or more balls.</param>
/// <param name="Lower">From there to the wrist or ankle, 2 or more balls; begins where the upper part ends.</param>
/// <param name="Tip">Hand or foot: groups of balls, each with a skin around it.</param>
/// <param name="IsArm">An arm, under a sleeve; otherwise a leg, in shorts.</param>
/// <param name="ClothedFraction">How much of the upper part is under cloth, 0 to 1.</param>
public sealed record FigureLimb(
    IReadOnlyList<Round> Upper, IReadOnlyList<Round> Lower, IReadOnlyList<IReadOnlyList<Round>> Tip, bool IsArm, double ClothedFraction)
{
    internal double DepthMm => (Upper[0].DepthMm + 2 * Upper[^1].DepthMm + Lower[^1].DepthMm) / 4;
}
