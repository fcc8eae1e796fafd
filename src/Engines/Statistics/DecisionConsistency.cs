namespace Slantwise.Engines.Statistics;

/// <summary>How many decisions agree with the evidence of the set they followed.</summary>
/// <param name="ConsistentCount">Decisions that progress, consolidate, stretch, step safely or adjust.</param>
/// <param name="DecidedCount">Decisions with evidence, those included.</param>
/// <param name="NoEvidenceCount">Decisions after too few trials; they count neither way.</param>
/// <remarks>A description of choices, not a mark: the reasons for the others may be good ones, and are asked for.</remarks>
public readonly record struct DecisionConsistency(int ConsistentCount, int DecidedCount, int NoEvidenceCount)
{
    /// <summary>The consistent share of the decisions with evidence; none where there is none.</summary>
    public double? ShareFraction => DecidedCount == 0 ? null : (double)ConsistentCount / DecidedCount;

    /// <summary>The consistency of some decisions.</summary>
    /// <param name="patterns">Any number, any order.</param>
    public static DecisionConsistency Of(IEnumerable<DecisionPattern> patterns)
    {
        int consistent = 0, decided = 0, without = 0;
        foreach (var pattern in patterns)
        {
            if (pattern == DecisionPattern.NoEvidence)
            {
                without++;
                continue;
            }
            decided++;
            if (pattern is not (DecisionPattern.Retreat or DecisionPattern.Overreach or DecisionPattern.Persist)) consistent++;
        }
        return new(consistent, decided, without);
    }
}
