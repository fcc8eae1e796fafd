namespace Slantwise.Records.Evidence.Growth;

/// <summary>In how many sets more was predicted than came, about as much, and fewer.</summary>
/// <param name="MoreCount">Sets with more predicted, by over one try or one second.</param>
/// <param name="MetCount">Sets within that.</param>
/// <param name="FewerCount">Sets with fewer predicted.</param>
/// <param name="EntryIds">The predictions and tries compared.</param>
public sealed record PredictionSides(int MoreCount, int MetCount, int FewerCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>Sets compared, n.</summary>
    public int SetCount => MoreCount + MetCount + FewerCount;

    /// <summary>The sides of some sets.</summary>
    /// <param name="sets">Any number; those with nothing to compare are passed over. A set with both a number and a time predicted is read by the number.</param>
    public static PredictionSides Of(IEnumerable<SetEvidence> sets)
    {
        var compared = sets
            .Select(s => (Set: s, Error: s.PredictionErrorCount / PredictionEvidence.ToleranceCount ?? s.PredictionErrorS / PredictionEvidence.ToleranceS))
            .Where(s => s.Error is not null).ToList();
        return new(
            compared.Count(s => s.Error > 1), compared.Count(s => s.Error is >= -1 and <= 1), compared.Count(s => s.Error < -1),
            compared.SelectMany(s => s.Set.Success.EntryIds.Prepend(s.Set.PredictionEntryId!.Value)).ToList());
    }
}
