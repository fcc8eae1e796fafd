namespace Slantwise.Engines.Planning.Practice;

/// <summary>How long the action of one trial takes, from its dose.</summary>
public static class ActionTime
{
    /// <summary>A hold with a target, where some fall before it: the mean of what is held, at most the target.</summary>
    /// <param name="targetS">The target, above 0, at most 4 hours.</param>
    /// <param name="heldFraction">How many of the trials reach it, above 0 to 1; 1 plans for the longest.</param>
    /// <remarks>
    /// Falls come at a steady rate: of all who begin, exp(−t · rate) still hold at t, and at the target the share given. The mean time held is then target · (1 − share) / ln(1 / share). A working
    /// rule: real falls come rather early, so that this is rather too long.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A target not above 0 or above 4 hours; a share not above 0 to 1.</exception>
    public static double HoldS(double targetS, double heldFraction)
    {
        if (!(targetS is > 0 and <= 4 * 3600)) throw new ArgumentOutOfRangeException(nameof(targetS), targetS, "A target is above 0 seconds and at most 4 hours.");
        if (!(heldFraction is > 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(heldFraction), heldFraction, "A share is above 0 and at most 1.");
        // Near 1 the quotient is 0 by 0; its limit is 1.
        return 1 - heldFraction < 1e-9 ? targetS : targetS * (1 - heldFraction) / -Math.Log(heldFraction);
    }

    /// <summary>So many repetitions one after the other.</summary>
    /// <param name="repetitions">1 to 1,000.</param>
    /// <param name="eachS">The time of one, above 0, at most 10 minutes: a throw with its flight and fetching, a jump of the rope.</param>
    /// <exception cref="ArgumentOutOfRangeException">Repetitions not of 1 to 1,000; a time not above 0 or above 10 minutes.</exception>
    public static double RepetitionsS(int repetitions, double eachS)
    {
        if (repetitions is < 1 or > 1000) throw new ArgumentOutOfRangeException(nameof(repetitions), repetitions, "There are 1 to 1,000 repetitions.");
        if (!(eachS is > 0 and <= 600)) throw new ArgumentOutOfRangeException(nameof(eachS), eachS, "One takes more than 0 seconds and at most 10 minutes.");
        return repetitions * eachS;
    }
}
