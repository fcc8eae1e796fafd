using MathNet.Numerics;

namespace Slantwise.Engines.Statistics;

/// <summary>How likely the share behind a count of successes is below, inside or above a band, having held every share for equally likely before.</summary>
/// <param name="TrialCount">The trials behind it, 0 or more.</param>
/// <param name="MeanFraction">The expected share, (successes + 1) / (trials + 2); 1/2 without a trial.</param>
/// <param name="BelowFraction">The chance that the share is below the band.</param>
/// <param name="WithinFraction">The chance that it is inside the band.</param>
/// <param name="AboveFraction">The chance that it is above the band. The three sum to 1.</param>
/// <remarks>Beta(1, 1) before, Beta(1 + successes, 1 + failures) after. Source: [Gelman2013] section 2.1.</remarks>
public readonly record struct BetaPosterior(
    int TrialCount, double MeanFraction, double BelowFraction, double WithinFraction, double AboveFraction)
{
    /// <summary>The chances for a band.</summary>
    /// <param name="successCount">0 to the number of trials.</param>
    /// <param name="trialCount">0 or more; without a trial the chances are the widths of the three parts.</param>
    /// <param name="lowFraction">Where the band begins, 0 to 1.</param>
    /// <param name="highFraction">Where it ends, from its beginning to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Successes below 0 or above the trials; a band outside 0 to 1 or ending before it begins.</exception>
    public static BetaPosterior Of(int successCount, int trialCount, double lowFraction, double highFraction)
    {
        Counts.Check(successCount, trialCount);
        if (!(lowFraction >= 0 && lowFraction <= 1))
            throw new ArgumentOutOfRangeException(nameof(lowFraction), lowFraction, "A band begins from 0 to 1.");
        if (!(highFraction >= lowFraction && highFraction <= 1))
            throw new ArgumentOutOfRangeException(nameof(highFraction), highFraction, $"A band ends from its beginning, here {lowFraction}, to 1.");

        double a = successCount + 1, b = trialCount - successCount + 1;
        var upToLow = SpecialFunctions.BetaRegularized(a, b, lowFraction);
        var upToHigh = SpecialFunctions.BetaRegularized(a, b, highFraction);
        return new(trialCount, a / (a + b), upToLow, Math.Max(0, upToHigh - upToLow), 1 - upToHigh);
    }

    /// <summary>Where the share lies, if one of the three chances is large enough to say so.</summary>
    /// <param name="enoughTrialCount">Below this many trials nothing is said, 1 or more.</param>
    /// <param name="certaintyFraction">How large a chance must be, above 1/2 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 trial asked for; a certainty outside 1/2 to 1.</exception>
    public SuccessReading Read(int enoughTrialCount, double certaintyFraction)
    {
        if (enoughTrialCount < 1)
            throw new ArgumentOutOfRangeException(nameof(enoughTrialCount), enoughTrialCount, "At least 1 trial is needed to say anything.");
        if (!(certaintyFraction > 0.5 && certaintyFraction <= 1))
            throw new ArgumentOutOfRangeException(nameof(certaintyFraction), certaintyFraction, "A certainty lies above 1/2 and up to 1: otherwise two readings could hold at once.");
        if (TrialCount < enoughTrialCount) return SuccessReading.NotEnoughTries;
        if (BelowFraction >= certaintyFraction) return SuccessReading.Below;
        if (AboveFraction >= certaintyFraction) return SuccessReading.Above;
        return WithinFraction >= certaintyFraction ? SuccessReading.Within : SuccessReading.NotEnoughTries;
    }
}
