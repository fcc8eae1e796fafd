namespace Slantwise.Engines.Mechanics;

/// <summary>How fast a still body falls away from its balance: the time in which a small tilt grows to 2.7 times itself.</summary>
/// <remarks>
/// A rigid body tipping about the floor like a point at its centre of mass: √(h/g). A real body, whose mass is spread out, is somewhat
/// slower. Source: [Hof2005], with the standing pendulum's length taken as the centre's height.
/// </remarks>
public static class PendulumTime
{
    // Standard gravity.
    private const double GravityMPerS2 = 9.80665;

    /// <summary>The time of a body of a known stature.</summary>
    /// <param name="centreHeightH">The centre of mass above the floor, in statures, more than 0.</param>
    /// <param name="statureM">The stature, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height or a stature that is not more than 0.</exception>
    public static double OfS(double centreHeightH, double statureM)
    {
        if (!(centreHeightH > 0)) throw new ArgumentOutOfRangeException(nameof(centreHeightH), centreHeightH, "A centre of mass is above the floor.");
        if (!(statureM > 0)) throw new ArgumentOutOfRangeException(nameof(statureM), statureM, "A stature is more than 0 metres.");
        return Math.Sqrt(centreHeightH * statureM / GravityMPerS2);
    }
}
