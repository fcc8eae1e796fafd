using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence;

/// <summary>How often a pattern of decision occurred.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="SetCount">In how many sets, 1 or more.</param>
/// <param name="EntryIds">Their decisions' entries.</param>
public sealed record PatternCount(DecisionPattern Pattern, int SetCount, IReadOnlyList<Guid> EntryIds);
