namespace Slantwise.Engines.Statistics.Reach;

/// <summary>The chances of success at which a level is worth starting from: likely enough to succeed, not yet sure to.</summary>
/// <remarks>From .60 to .90 unless the teacher sets it: common practice, no source fits school balances.</remarks>
public readonly record struct ReachBand
{
    /// <summary>The usual band, .60 to .90.</summary>
    public static ReachBand Usual { get; } = new(.60, .90);

    /// <summary>A band.</summary>
    /// <param name="lowFraction">Where it begins, more than 0.</param>
    /// <param name="highFraction">Where it ends, more than where it begins and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A band that is empty or reaches 0 or 1.</exception>
    public ReachBand(double lowFraction, double highFraction)
    {
        if (!(lowFraction > 0 && lowFraction < highFraction))
            throw new ArgumentOutOfRangeException(nameof(lowFraction), lowFraction, $"A band begins above 0 and below its end, here {highFraction}.");
        if (!(highFraction < 1)) throw new ArgumentOutOfRangeException(nameof(highFraction), highFraction, "A band ends below 1.");
        (LowFraction, HighFraction) = (lowFraction, highFraction);
    }

    /// <summary>Where it begins.</summary>
    public double LowFraction { get; }

    /// <summary>Where it ends.</summary>
    public double HighFraction { get; }

    internal double LowLogits => Math.Log(LowFraction / (1 - LowFraction));

    internal double HighLogits => Math.Log(HighFraction / (1 - HighFraction));
}
