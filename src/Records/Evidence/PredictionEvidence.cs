using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence;

/// <summary>How predictions compare with what came.</summary>
public sealed record PredictionEvidence
{
    /// <summary>A mean error up to one trial, either way, is called close.</summary>
    public const double ToleranceCount = 1;

    /// <summary>A mean error up to one second, either way, is called close.</summary>
    public const double ToleranceS = 1;

    /// <summary>Sets with a prediction.</summary>
    public required int PredictedSetCount { get; init; }

    /// <summary>Predicted successes against those that came, over complete sets; none where there is nothing to compare.</summary>
    public PredictionBias? Counts { get; init; }

    /// <summary>Predicted holds against timed ones; none where there is nothing to compare.</summary>
    public HoldPredictionBias? Holds { get; init; }

    /// <summary>The entries of the predictions and trials compared.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];

    /// <summary>The bias over some sets.</summary>
    /// <param name="sets">Any number; sets without a prediction, or not complete, are not compared.</param>
    public static PredictionEvidence Of(IEnumerable<SetEvidence> sets)
    {
        var predicted = sets.Where(s => s.PredictionEntryId is not null).ToList();
        var counted = predicted.Where(s => s.PredictionErrorCount is not null).ToList();
        var timed = predicted.Where(s => s.PredictionErrorS is not null).ToList();
        return new PredictionEvidence
        {
            PredictedSetCount = predicted.Count,
            Counts = PredictionBias.Of(
                counted.Select(s => new CountPrediction(s.PredictedSuccessCount!.Value, s.Success.SuccessCount, s.Success.TrialCount)).ToList(),
                ToleranceCount),
            Holds = HoldPredictionBias.Of(
                timed.Select(s => new HoldPrediction(s.PredictedHoldS!.Value, s.TimedBest!.Value.HeldS)).ToList(),
                ToleranceS),
            EntryIds = counted.Union(timed).SelectMany(s => s.Success.EntryIds.Prepend(s.PredictionEntryId!.Value)).ToList(),
        };
    }
}
