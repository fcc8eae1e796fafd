using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Decisions beside their sets for a whole class, as words. A description, never a mark.</summary>
public static class DecisionText
{
    /// <summary>The patterns shown, in the order of the bands of success: those where the reason is asked for as well.</summary>
    public static IReadOnlyList<DecisionPattern> Patterns { get; } = [.. Enum.GetValues<DecisionPattern>().Where(p => p != DecisionPattern.NoEvidence).Order()];

    /// <summary>How many decisions go with the set before them, with n and a range.</summary>
    public static string Of(DecisionConsistency consistency)
    {
        if (WilsonInterval.Of(consistency.ConsistentCount, consistency.DecidedCount, SuccessShare.RangeConfidenceFraction) is not { } range) return UnitWords.Say("DecisionsNone");
        var (low, high) = DotsOfTen.TenthsOf(range.LowFraction, range.HighFraction);
        return UnitWords.Say("DecisionsGo", consistency.ConsistentCount, consistency.DecidedCount) + " "
            + (consistency.DecidedCount < SuccessShare.EnoughTrialCount ? UnitWords.Say("DecisionsFew") : UnitWords.Say("DecisionsRange", low, high))
            + (consistency.NoEvidenceCount > 0 ? " " + UnitWords.SayCount("DecisionsWithout", consistency.NoEvidenceCount) : "");
    }

    /// <summary>Long stays; none where there is none.</summary>
    public static string? Of(LongStays stays) => stays.NearlyAlwaysCount + stays.SeldomCount == 0
        ? null : UnitWords.SayCount("LongStays", stays.PupilCount, stays.NearlyAlwaysCount, stays.SeldomCount);

    /// <summary>Whether the pupil's reason is worth asking for.</summary>
    public static bool IsAskedFor(DecisionPattern pattern) => pattern is DecisionPattern.Retreat or DecisionPattern.Overreach or DecisionPattern.Persist;
}
