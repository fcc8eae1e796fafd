using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>What pupils decided after sets at one level.</summary>
/// <param name="EasierCount">Decisions for an easier level.</param>
/// <param name="SameCount">Decisions for the same.</param>
/// <param name="HarderCount">Decisions for a harder one.</param>
/// <param name="EntryIds">The decisions' entries.</param>
public sealed record LevelDecisions(int EasierCount, int SameCount, int HarderCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>All of them, n.</summary>
    public int DecidedCount => EasierCount + SameCount + HarderCount;

    /// <summary>The decisions after some sets.</summary>
    /// <param name="sets">Any number; sets without a decision are passed over.</param>
    public static LevelDecisions Of(IEnumerable<SetEvidence> sets)
    {
        var decided = sets.Where(s => s.Decision is not null).ToList();
        int Count(NextLevel next) => decided.Count(s => s.Decision == next);
        return new(Count(NextLevel.Easier), Count(NextLevel.Same), Count(NextLevel.Harder), [.. decided.Select(s => s.DecisionEntryId!.Value)]);
    }
}
