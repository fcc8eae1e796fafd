using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Reviews;

/// <summary>What in a class's entries is worth a question, in the same way for the end of a lesson and for the plan of a unit.</summary>
/// <remarks>The thresholds are working rules of ours, not findings: each opens a question and closes none.</remarks>
internal static class ReviewRules
{
    // As many decided or compared sets as tries before anything is said, and of more than a few children.
    private const int EnoughSets = SuccessShare.EnoughTrialCount;
    private const int EnoughPupils = 3;

    public static IEnumerable<ReviewItem> Cues(TaskEvidence task, IReadOnlyList<PupilEvidence> pupils) =>
        from cue in OpenCue.Of(task, pupils)
        where cue.IsOpenForMany
        orderby (double)cue.OpenPupilCount / cue.CheckedPupilCount descending, cue.CueNumber
        // A cue may be a sentence: within another it has no full stop.
        let words = cue.Text.TrimEnd('.')
        let tenths = DotsOfTen.TenthsOf(cue.Range!.Value.LowFraction, cue.Range!.Value.HighFraction)
        select new ReviewItem(ReviewKind.Cue, "CueOpen", [task.Name, words, cue.OpenPupilCount, cue.CheckedPupilCount, tenths.Item1, tenths.Item2], "CueOpenAsk", [words]) { TaskId = task.TaskId };

    public static IEnumerable<ReviewItem> Decisions(IEnumerable<SetEvidence> sets)
    {
        var all = sets.ToList();
        var low = DecisionsAfter.Of(all).First(d => d.Band == SuccessBand.Low);
        var pupils = all.Where(s => s.DecisionEntryId is { } id && low.EntryIds.Contains(id)).Select(s => s.PupilId).Distinct().Count();
        if (low.DecidedCount >= EnoughSets && pupils >= EnoughPupils)
            yield return new(ReviewKind.Decisions, "DecisionsLow", [low.DecidedCount, pupils, low.EasierCount, low.SameCount, low.HarderCount], "DecisionsLowAsk", []);
    }

    public static IEnumerable<ReviewItem> Predictions(IEnumerable<SetEvidence> sets)
    {
        var all = sets.ToList();
        var pupils = all.Where(s => s.PredictionErrorCount is not null || s.PredictionErrorS is not null).Select(s => s.PupilId).Distinct().Count();
        if (pupils < EnoughPupils) yield break;
        var said = PredictionEvidence.Of(all);
        var (count, error, unit) = said switch
        {
            { Counts: { } counts } => (counts.SetCount, counts.MeanErrorCount / PredictionEvidence.ToleranceCount, "Tries"),
            { Holds: { } holds } => (holds.SetCount, holds.MeanErrorS / PredictionEvidence.ToleranceS, "Seconds"),
            _ => (0, 0, ""),
        };
        if (count < EnoughSets || Math.Abs(error) <= 1) yield break;
        yield return new(ReviewKind.Predictions, $"Predicted{(error > 0 ? "More" : "Fewer")}{unit}", [count, pupils, Math.Round(Math.Abs(error), 1)], "PredictedAsk", []);
    }

    /// <summary>Levels of a task that nobody chose, where enough pupils chose others; a level that policy leaves to nobody is passed over.</summary>
    public static IEnumerable<ReviewItem> Levels(TaskEvidence task, Func<Guid, bool> isOffered) =>
        from level in task.Levels
        where task.PupilCount >= OpenCue.EnoughPupilCount && level is { LevelId: { } id, LevelNumber: not null, ChosenSetCount: 0, TriedByPupilCount: 0 } && isOffered(id)
        select new ReviewItem(ReviewKind.Level, "LevelUnused", [task.Name, level.LevelNumber!, level.Name, task.PupilCount], "LevelUnusedAsk", []) { TaskId = task.TaskId };
}
