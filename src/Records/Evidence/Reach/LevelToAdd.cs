using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>Levels that would include more pupils.</summary>
/// <param name="Levels">The levels to add, in the order of their doses and forms; empty where none would help.</param>
/// <param name="IncludedCount">The expected number of pupils included with them.</param>
/// <param name="IsExact">Whether every choice of so many candidates was looked at.</param>
/// <param name="CandidateCount">How many levels were looked at.</param>
public sealed record LevelToAdd(IReadOnlyList<Level> Levels, double IncludedCount, bool IsExact, int CandidateCount);
