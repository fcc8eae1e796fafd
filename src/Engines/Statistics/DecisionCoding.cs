namespace Slantwise.Engines.Statistics;

/// <summary>Names the pattern a decision makes with the set it followed.</summary>
/// <remarks>
/// The bands are working rules for closed skills, about 80 in 100 being the success of productive practice:
/// Sources: [Rosenshine2012] principle 7; [SiedentopTannehill2000], from memory. They are compared in whole numbers, so 4 of 5 is 80 in 100 exactly.
/// </remarks>
public static class DecisionCoding
{
    /// <summary>The band of a set's success.</summary>
    /// <param name="successCount">0 to the number of trials.</param>
    /// <param name="trialCount">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Successes below 0 or above the trials.</exception>
    public static SuccessBand BandOf(int successCount, int trialCount)
    {
        Counts.Check(successCount, trialCount);
        if (trialCount < 3) return SuccessBand.TooFew;
        if (10L * successCount < 6L * trialCount) return SuccessBand.Low;
        // 3 of 3 and 4 of 4 are too short to be called mostly successful. They are read with the middle band, where no
        // decision asks for a reason: leaving them out would drop good sets and keep poor ones, and lower the consistency
        // of every class whose sheet has short sets.
        return trialCount >= 5 && 10L * successCount >= 8L * trialCount ? SuccessBand.High : SuccessBand.Middle;
    }

    /// <summary>The pattern of a decision.</summary>
    /// <param name="successCount">Successes of the set it followed, 0 to the number of trials.</param>
    /// <param name="trialCount">Trials of that set, 0 or more; below 3 there is no evidence.</param>
    /// <param name="next">What was decided.</param>
    /// <exception cref="ArgumentOutOfRangeException">Successes below 0 or above the trials; a direction that is none of the three.</exception>
    public static DecisionPattern Of(int successCount, int trialCount, DecisionDirection next)
    {
        if (!Enum.IsDefined(next))
            throw new ArgumentOutOfRangeException(nameof(next), next, "A decision is the same, harder or easier.");
        return (BandOf(successCount, trialCount), next) switch
        {
            (SuccessBand.TooFew, _) => DecisionPattern.NoEvidence,
            (SuccessBand.High, DecisionDirection.Harder) => DecisionPattern.Progress,
            (SuccessBand.High, DecisionDirection.Easier) => DecisionPattern.Retreat,
            (SuccessBand.Middle, DecisionDirection.Harder) => DecisionPattern.Stretch,
            (SuccessBand.Middle, DecisionDirection.Easier) => DecisionPattern.SafeStep,
            (SuccessBand.Low, DecisionDirection.Harder) => DecisionPattern.Overreach,
            (SuccessBand.Low, DecisionDirection.Easier) => DecisionPattern.Adjust,
            (SuccessBand.Low, _) => DecisionPattern.Persist,
            _ => DecisionPattern.Consolidate,
        };
    }
}
