namespace Slantwise.Records.Evidence;

/// <summary>The predictions of one lesson, one point of bias over time.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="LessonNumber">The lesson within this evidence, from 1.</param>
/// <param name="Predictions">The bias in that lesson.</param>
public sealed record LessonPredictions(Guid LessonId, int LessonNumber, PredictionEvidence Predictions)
{
    internal static IReadOnlyList<LessonPredictions> Of(IEnumerable<SetEvidence> sets) => sets
        .GroupBy(s => (s.LessonNumber, s.LessonId))
        .OrderBy(g => g.Key.LessonNumber)
        .Select(g => new LessonPredictions(g.Key.LessonId, g.Key.LessonNumber, PredictionEvidence.Of(g)))
        .ToList();
}
