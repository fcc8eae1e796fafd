using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Records.Evidence.Orders;

/// <summary>Two levels next to each other on the sheet, beside what pupils did at both.</summary>
/// <param name="EasierNumber">The level the sheet puts first, by its number in the evidence.</param>
/// <param name="HarderNumber">The next one.</param>
/// <param name="Counts">Pupils who tried both often enough, each beside themselves.</param>
/// <param name="ManagedHarderCount">Of them, pupils who managed the harder one.</param>
/// <param name="Contrast">How much harder the model takes the second to be, learning and choice taken into account; none where it does not know both.</param>
/// <param name="EntryIds">The tries of those pupils at both levels.</param>
public sealed record OrderedPair(
    int EasierNumber, int HarderNumber, LevelPair Counts, int ManagedHarderCount, Estimate? Contrast, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>Under this many pupils the counts alone say nothing. A working rule, no source.</summary>
    public const int EnoughPupilCount = 5;

    private const double QuartileDeviations = 0.6744897501960817;

    /// <summary>Of those who managed the harder one, pupils who managed the easier one too.</summary>
    public int ManagedBothCount => ManagedHarderCount - Counts.AgainstCount;

    /// <summary>Where that share likely lies; none where nobody managed the harder one.</summary>
    public WilsonInterval? BothRange => WilsonInterval.Of(ManagedBothCount, ManagedHarderCount, SuccessShare.RangeConfidenceFraction);

    /// <summary>Whether the model assumes more about the two than it has seen.</summary>
    public bool IsMostlyAssumed => Contrast is not { DataShareFraction: >= .5 } contrast || contrast.Cautions.HasFlag(ResponseCaution.Disconnected);

    /// <summary>Where the easier one comes off 5 times of 10, how often the harder one does: lower end of the range. None without a contrast.</summary>
    public double? LowOfEvenFraction => Contrast is { } c ? EvenChance.Of(-(c.MeanLogits + EvenChance.RangeDeviations * c.SdLogits)) : null;

    /// <summary>The same, upper end.</summary>
    public double? HighOfEvenFraction => Contrast is { } c ? EvenChance.Of(-(c.MeanLogits - EvenChance.RangeDeviations * c.SdLogits)) : null;

    /// <summary>How the entries stand to the pair.</summary>
    public OrderStanding Standing
    {
        get
        {
            var (isFew, isSeen) = (Counts.ComparedCount < EnoughPupilCount, !IsMostlyAssumed);
            if (isFew && !isSeen) return OrderStanding.NotEnough;
            var isOneSided = !isFew && Counts.ChanceFraction <= 1 - SuccessShare.RangeConfidenceFraction;
            var countsLean = isFew ? 0 : Math.Sign(Counts.AgainstCount - Counts.AsOrderedCount);
            var modelIsAgainst = isSeen && LowOfEvenFraction > .5;
            var modelIsFor = isSeen && HighOfEvenFraction < .5;
            // Two ways of looking that contradict each other are no evidence for either.
            if (modelIsAgainst) return isOneSided && countsLean < 0 ? OrderStanding.Unclear : OrderStanding.Against;
            if (modelIsFor) return countsLean > 0 ? OrderStanding.Unclear : OrderStanding.AsOrdered;
            // Three chances of four that it is no harder: less is not worth a question.
            return countsLean > 0 || isSeen && Contrast is { } c && c.MeanLogits + QuartileDeviations * c.SdLogits < 0 ? OrderStanding.PerhapsAgainst : OrderStanding.Unclear;
        }
    }
}
