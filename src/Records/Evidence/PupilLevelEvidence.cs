namespace Slantwise.Records.Evidence;

/// <summary>What a pupil did at one level of a task, over all its sets.</summary>
/// <param name="LevelId">The level; none for trials with no level written.</param>
/// <param name="LevelNumber">Its number in this evidence's list of levels; none where none was written or it is on no sheet.</param>
/// <param name="SetCount">Sets at this level.</param>
/// <param name="Success">Their trials pooled, with n and a range.</param>
public sealed record PupilLevelEvidence(Guid? LevelId, int? LevelNumber, int SetCount, SuccessShare Success)
{
    internal static IReadOnlyList<PupilLevelEvidence> Of(IEnumerable<SetEvidence> sets) => sets
        .GroupBy(s => (s.LevelId, s.LevelNumber))
        .OrderBy(g => g.Key.LevelNumber ?? int.MaxValue).ThenBy(g => g.Key.LevelId is null).ThenBy(g => g.Key.LevelId)
        .Select(g => new PupilLevelEvidence(g.Key.LevelId, g.Key.LevelNumber, g.Count(), SuccessShare.Of(g.SelectMany(s => s.Trials))))
        .ToList();
}
