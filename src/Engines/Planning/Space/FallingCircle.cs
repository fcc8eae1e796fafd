namespace Slantwise.Engines.Planning.Space;

/// <summary>How far from the middle of a mat somebody's body may reach in a fall.</summary>
/// <remarks>
/// A working rule without a source: the body falls like a rod that turns about where it stands, so that its highest point comes down as far away as it was high. Who steps or rolls on
/// goes further; who bends goes less far.
/// </remarks>
public static class FallingCircle
{
    /// <summary>The circle of a posture.</summary>
    /// <param name="heightH">The posture's highest point above the mat in statures, 0 to 1.5; above 1 with the arms up or inverted.</param>
    /// <param name="statureM">The stature to reckon with, above 0, at most 2.5: an age's median or more.</param>
    /// <param name="marginM">What comes on top, 0 to 5.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height not of 0 to 1.5 statures; a stature not above 0 or above 2.5 m; a margin not of 0 to 5 m.</exception>
    public static double RadiusM(double heightH, double statureM, double marginM)
    {
        if (!(heightH is >= 0 and <= 1.5)) throw new ArgumentOutOfRangeException(nameof(heightH), heightH, "A posture is 0 to 1.5 statures high.");
        if (!(statureM is > 0 and <= 2.5)) throw new ArgumentOutOfRangeException(nameof(statureM), statureM, "A stature is above 0 and at most 2.5 metres.");
        if (!(marginM is >= 0 and <= 5)) throw new ArgumentOutOfRangeException(nameof(marginM), marginM, "A margin is 0 to 5 metres.");
        return heightH * statureM + marginM;
    }
}
