using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Records.Evidence.Chances;

/// <summary>What one pupil wrote in one lesson, as the response model takes it.</summary>
/// <param name="Trials">In the order of the sets.</param>
/// <param name="HasPredicted">Whether a count was predicted in any set.</param>
/// <param name="Predicted">The first of them; none where there is none or it cannot be.</param>
internal sealed record PupilTrials(IReadOnlyList<ResponseTrial> Trials, bool HasPredicted, FirstPrediction? Predicted)
{
    public static PupilTrials Of(IEnumerable<SetEvidence> sets, int pupil, ChanceLevels levels)
    {
        var known = sets.Where(s => s.LevelId is { } id && levels.IndexById.ContainsKey(id)).ToList();
        var predicted = known.Where(s => s.PredictedSuccessCount is not null).OrderBy(s => s.TaskId).ThenBy(s => s.SetNumber).FirstOrDefault();
        return new([.. known.SelectMany(s => TrialsOf(s, pupil, levels))], predicted is not null, predicted is null ? null : PredictionOf(predicted, levels));
    }

    public bool SaysSameAs(PupilTrials other) =>
        HasPredicted == other.HasPredicted && Predicted == other.Predicted && Trials.SequenceEqual(other.Trials);

    // A timed hold tells more than its tick, so it stands alone; ticks of a set are counted together.
    private static IEnumerable<ResponseTrial> TrialsOf(SetEvidence set, int pupil, ChanceLevels levels)
    {
        var (level, lesson) = (levels.IndexById[set.LevelId!.Value], set.LessonNumber - 1);
        var isHold = levels.Levels[level].Dose is { Measure: DoseMeasure.Hold };
        foreach (var timed in set.Trials.Where(t => isHold && t.HeldS is not null))
            yield return ResponseTrial.Single(pupil, level, lesson, timed.IsSuccess, timed.HeldS);
        var ticked = set.Trials.Where(t => !isHold || t.HeldS is null).ToList();
        if (ticked.Count > 0) yield return new ResponseTrial(pupil, level, lesson, ticked.Count(t => t.IsSuccess), ticked.Count);
    }

    private static FirstPrediction? PredictionOf(SetEvidence set, ChanceLevels levels)
    {
        var count = set.PlannedTrialCount ?? set.Trials.Count;
        return set.PredictedSuccessCount is { } expected && count > 0 && expected >= 0 && expected <= count
            ? new FirstPrediction(levels.IndexById[set.LevelId!.Value], (double)expected / count)
            : null;
    }
}
