using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence;

/// <summary>Decisions beside the evidence of the sets they followed. Patterns to talk about, not a mark.</summary>
public sealed record DecisionEvidence
{
    /// <summary>The patterns that occurred, in the order of <see cref="DecisionPattern"/>.</summary>
    public IReadOnlyList<PatternCount> Patterns { get; init; } = [];

    /// <summary>How many decisions agree with their sets.</summary>
    public required DecisionConsistency Consistency { get; init; }

    /// <summary>The decisions of some sets.</summary>
    /// <param name="sets">Any number; sets without a decision are passed over.</param>
    public static DecisionEvidence Of(IEnumerable<SetEvidence> sets)
    {
        var decided = sets.Where(s => s.Pattern is not null).ToList();
        return new DecisionEvidence
        {
            Consistency = DecisionConsistency.Of(decided.Select(s => s.Pattern!.Value)),
            Patterns = decided
                .GroupBy(s => s.Pattern!.Value)
                .OrderBy(g => g.Key)
                .Select(g => new PatternCount(g.Key, g.Count(), g.Select(s => s.DecisionEntryId!.Value).ToList()))
                .ToList(),
        };
    }
}
