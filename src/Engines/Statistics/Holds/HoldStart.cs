namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How often a try got into its position at all: a fall in the first moment is no short hold but no hold.</summary>
/// <param name="TriedCount">Tries of which that is known.</param>
/// <param name="StartedCount">Those that got into the position.</param>
/// <param name="UnknownCount">Tries that failed and were not timed: they say nothing of it.</param>
public readonly record struct HoldStart(int TriedCount, int StartedCount, int UnknownCount)
{
    /// <summary>The starts among some tries.</summary>
    /// <param name="attempts">Any number, any order.</param>
    /// <param name="beforeS">A fall before this never got into the position, more than 0; about 1 s is common practice.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not finite; a first moment that is not more than 0.</exception>
    public static HoldStart Of(IReadOnlyList<HoldAttempt> attempts, double beforeS)
    {
        if (!(beforeS > 0 && double.IsFinite(beforeS)))
            throw new ArgumentOutOfRangeException(nameof(beforeS), beforeS, "The first moment lasts more than 0 seconds.");
        int started = 0, not = 0, unknown = 0;
        foreach (var attempt in attempts)
        {
            if (attempt.HeldS is { } held && !(held >= 0 && double.IsFinite(held)))
                throw new ArgumentOutOfRangeException(nameof(attempts), held, "A hold lasts 0 seconds or more and is a number.");
            if (attempt.HasReachedDose || attempt.HeldS >= beforeS) started++;
            else if (attempt.HeldS is null) unknown++;
            else not++;
        }
        return new(started + not, started, unknown);
    }

    /// <summary>The range for the share that gets into the position; none without a try.</summary>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public WilsonInterval? Range(double confidenceFraction) => WilsonInterval.Of(StartedCount, TriedCount, confidenceFraction);
}
