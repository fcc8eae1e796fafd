using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence;

/// <summary>What was decided after sets of one band of success.</summary>
/// <param name="Band">How much of the set before the decision succeeded.</param>
/// <param name="SameCount">Decisions for the same level.</param>
/// <param name="HarderCount">Decisions for a harder level.</param>
/// <param name="EasierCount">Decisions for an easier level.</param>
/// <param name="EntryIds">The decisions' entries.</param>
public sealed record DecisionsAfter(SuccessBand Band, int SameCount, int HarderCount, int EasierCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>All decisions of the band, n.</summary>
    public int DecidedCount => SameCount + HarderCount + EasierCount;

    /// <summary>The four bands, high first and too few trials last, also where nothing was decided.</summary>
    /// <param name="sets">Any number; sets without a decision are passed over.</param>
    public static IReadOnlyList<DecisionsAfter> Of(IEnumerable<SetEvidence> sets)
    {
        var byBand = sets.Where(s => s.Decision is not null)
            .ToLookup(s => DecisionCoding.BandOf(s.Success.SuccessCount, s.Success.TrialCount));
        return Enum.GetValues<SuccessBand>().OrderDescending().Select(band => new DecisionsAfter(
            band,
            byBand[band].Count(s => s.Decision == NextLevel.Same),
            byBand[band].Count(s => s.Decision == NextLevel.Harder),
            byBand[band].Count(s => s.Decision == NextLevel.Easier),
            byBand[band].Select(s => s.DecisionEntryId!.Value).ToList())).ToList();
    }
}
