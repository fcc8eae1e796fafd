using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence;

/// <summary>Successes of some trials, with what they can and cannot say.</summary>
public sealed record SuccessShare
{
    /// <summary>How often ranges of this kind hold the true share.</summary>
    public const double RangeConfidenceFraction = 0.90;

    /// <summary>Below this many trials a share is shown muted: not enough tries yet.</summary>
    public const int EnoughTrialCount = 5;

    /// <summary>Where productive practice is taken to begin.</summary>
    public const double BandLowFraction = 0.6;

    /// <summary>Where productive practice is taken to end.</summary>
    public const double BandHighFraction = 0.9;

    private const double CertaintyFraction = 0.8;

    /// <summary>Trials that succeeded.</summary>
    public required int SuccessCount { get; init; }

    /// <summary>Trials, n.</summary>
    public required int TrialCount { get; init; }

    /// <summary>Successes over trials; none without a trial.</summary>
    public double? ShareFraction => TrialCount == 0 ? null : (double)SuccessCount / TrialCount;

    /// <summary>The lower end of the Wilson range; none without a trial.</summary>
    public double? LowFraction { get; init; }

    /// <summary>The upper end of the Wilson range; none without a trial.</summary>
    public double? HighFraction { get; init; }

    /// <summary>The confidence of the range, 0.90.</summary>
    public double ConfidenceFraction => RangeConfidenceFraction;

    /// <summary>Whether there are enough trials to read the share at all.</summary>
    public bool HasEnoughTrials => TrialCount >= EnoughTrialCount;

    /// <summary>Below, inside or above the productive band, or not enough tries yet.</summary>
    public SuccessReading Reading { get; init; }

    /// <summary>The trials' entries.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];

    /// <summary>The share of some trials.</summary>
    /// <param name="trials">Any number, of one level or of several.</param>
    public static SuccessShare Of(IEnumerable<TrialEvidence> trials)
    {
        var all = trials.ToList();
        var successes = all.Count(t => t.IsSuccess);
        var range = WilsonInterval.Of(successes, all.Count, RangeConfidenceFraction);
        return new SuccessShare
        {
            SuccessCount = successes,
            TrialCount = all.Count,
            LowFraction = range?.LowFraction,
            HighFraction = range?.HighFraction,
            Reading = BetaPosterior.Of(successes, all.Count, BandLowFraction, BandHighFraction).Read(EnoughTrialCount, CertaintyFraction),
            EntryIds = all.Select(t => t.EntryId).ToList(),
        };
    }
}
