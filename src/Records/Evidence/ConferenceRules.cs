using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence;

/// <summary>Turns what a pupil wrote into reasons to talk, the most pressing first.</summary>
/// <remarks>
/// The triggers and thresholds are our own working rules, not a finding: each opens a question and closes none. The form,
/// a neutral description followed by a question that leaves the decision with the pupil, is the inclusion style's.
/// Source: [MosstonAshworth2008] ch. 10, from memory.
/// </remarks>
internal static class ConferenceRules
{
    private const int ManyTrials = 20;
    private const int FarOff = 2;

    public static IEnumerable<Conference> Of(PupilEvidence pupil, IReadOnlyList<TaskEvidence> tasks, Guid recentLessonId)
    {
        var names = tasks.ToDictionary(t => t.TaskId, t => t.Name);
        var recent = pupil.Tasks
            .Select(t => (Sets: t.Sets.Where(s => s.LessonId == recentLessonId).ToList(), All: t.Sets, Name: names[t.TaskId], Task: tasks[t.TaskNumber - 1]))
            .ToList();
        foreach (var talk in recent.SelectMany(t => NotOffered(pupil, t.Sets, t.Name))) yield return talk;
        if (pupil.EmptyLessonIds.Contains(recentLessonId))
            yield return Talk(pupil, null, VisitTopic.Decision, "NoEntries", [], [], []);
        foreach (var talk in recent.SelectMany(t => ChecksDiffer(pupil, t.Sets, t.Name))) yield return talk;
        foreach (var talk in recent.SelectMany(t => CueNeverTicked(pupil, t.Sets, t.Name, t.Task))) yield return talk;
        foreach (var talk in recent.SelectMany(t => Stayed(pupil, t.Sets, t.Name))) yield return talk;
        foreach (var talk in recent.SelectMany(t => DecidedAgainst(pupil, t.Sets, t.Name))) yield return talk;
        foreach (var talk in recent.Where(t => t.Sets.Count > 0).SelectMany(t => AllMatched(pupil, t.All, t.Name))) yield return talk;
        foreach (var talk in recent.SelectMany(t => FarPredictions(pupil, t.Sets, t.Name))) yield return talk;
        foreach (var talk in recent.SelectMany(t => ChangedAfterOneTry(pupil, t.Sets, t.Name))) yield return talk;
        foreach (var talk in recent.SelectMany(t => HoldsEnd(pupil, t.Sets, t.Name))) yield return talk;
    }

    private static IEnumerable<Conference> NotOffered(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        var found = sets.Where(s => s.IsLevelOffered == false && s.SheetLevelNumber is not null).ToList();
        if (found.Count > 0)
            yield return Talk(pupil, found[0], VisitTopic.Safety, "NotOffered", [task, found[0].SetNumber, found[0].SheetLevelNumber!], [task], found.SelectMany(s => s.EntryIds));
    }

    private static IEnumerable<Conference> ChecksDiffer(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        foreach (var set in sets.Where(s => s.AreCuesChecked && s.UntickedCueNumbers.Count == 0))
        {
            if (set.Checks.FirstOrDefault(c => !c.IsMet) is not { } check) continue;
            yield return Talk(pupil, set, VisitTopic.Cue, "ChecksDiffer", [task, set.SetNumber, check.CueNumber], [check.CueNumber], set.CueEntryIds.Append(check.EntryId));
            yield break;
        }
    }

    private static IEnumerable<Conference> CueNeverTicked(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task, TaskEvidence evidence)
    {
        var seen = sets.Where(s => s.AreCuesChecked).ToList();
        if (seen.Count < 2) yield break;
        var open = evidence.Cues.FirstOrDefault(c => seen.All(s => s.UntickedCueNumbers.Contains(c.CueNumber)));
        if (open is not null)
            yield return Talk(pupil, seen[0], VisitTopic.Cue, "CueNeverTicked", [task, open.CueNumber, seen.Count], [open.CueNumber], seen.SelectMany(s => s.CueEntryIds));
    }

    private static IEnumerable<Conference> Stayed(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        foreach (var (set, next) in sets.Zip(sets.Skip(1)))
        {
            if (set.LevelId is null || set.LevelId != next.LevelId || BandOf(set) != SuccessBand.Low || BandOf(next) != SuccessBand.Low) continue;
            var both = SuccessShare.Of(set.Trials.Concat(next.Trials));
            yield return Talk(
                pupil, set, VisitTopic.Decision, "Stayed", [task, set.SetNumber, next.SetNumber, both.SuccessCount, both.TrialCount],
                [both.SuccessCount, both.TrialCount], set.EntryIds.Concat(next.EntryIds));
            yield break;
        }
    }

    private static IEnumerable<Conference> DecidedAgainst(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        foreach (var set in sets.Where(s => s.Pattern is DecisionPattern.Overreach or DecisionPattern.Retreat))
        {
            yield return Talk(
                pupil, set, VisitTopic.Decision, set.Pattern == DecisionPattern.Overreach ? "HarderAfterFew" : "EasierAfterMany",
                [task, set.SetNumber, set.Success.SuccessCount, set.Success.TrialCount], [], set.EntryIds);
        }
    }

    private static IEnumerable<Conference> AllMatched(PupilEvidence pupil, IReadOnlyList<SetEvidence> all, string task)
    {
        // The latest run of sets at one level.
        var run = all.Reverse().TakeWhile(s => s.LevelId is not null && s.LevelId == all[^1].LevelId).Reverse().ToList();
        var pooled = SuccessShare.Of(run.SelectMany(s => s.Trials));
        if (pooled.TrialCount >= ManyTrials && pooled.ShareFraction > SuccessShare.BandHighFraction)
            yield return Talk(pupil, run[0], VisitTopic.Decision, "AllMatched", [task, pooled.SuccessCount, pooled.TrialCount], [], run.SelectMany(s => s.EntryIds));
    }

    private static IEnumerable<Conference> FarPredictions(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        foreach (var (key, sign) in new[] { ("PredictedMore", 1), ("PredictedFewer", -1) })
        {
            var counted = sets.Where(s => sign * s.PredictionErrorCount >= FarOff).ToList();
            if (counted.Count >= 2)
            {
                yield return Talk(
                    pupil, counted[^1], VisitTopic.Decision, key,
                    [task, counted.Count, counted[^1].SetNumber, counted[^1].PredictedSuccessCount!, counted[^1].Success.SuccessCount], [],
                    counted.SelectMany(s => s.EntryIds));
            }
            var timed = sets.Where(s => sign * s.PredictionErrorS >= FarOff).ToList();
            if (timed.Count >= 2)
            {
                yield return Talk(
                    pupil, timed[^1], VisitTopic.Decision, sign > 0 ? "PredictedLonger" : "PredictedShorter",
                    [task, timed.Count, timed[^1].SetNumber, timed[^1].PredictedHoldS!, timed[^1].TimedBest!.Value.HeldS], [],
                    timed.SelectMany(s => s.EntryIds));
            }
        }
    }

    private static IEnumerable<Conference> ChangedAfterOneTry(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        foreach (var (set, next) in sets.Zip(sets.Skip(1)))
        {
            // On a sheet with one trial a set, changing after one try is what the sheet asks for.
            if (set is not { Trials.Count: 1, PlannedTrialCount: > 1, LevelId: not null } || next.LevelId is null || next.LevelId == set.LevelId) continue;
            yield return Talk(pupil, set, VisitTopic.Decision, "ChangedAfterOneTry", [task, set.SetNumber], [], set.EntryIds.Append(next.ChoiceEntryId!.Value));
            yield break;
        }
    }

    private static IEnumerable<Conference> HoldsEnd(PupilEvidence pupil, IReadOnlyList<SetEvidence> sets, string task)
    {
        var fell = sets
            .Where(s => s.Dose is { Kind: DoseKind.HoldS })
            .SelectMany(s => s.Trials.Where(t => t is { IsSuccess: false, HeldS: not null }).Select(t => (Set: s, Trial: t, ReachedFraction: t.HeldS!.Value / (double)s.Dose!.Amount)))
            .ToList();
        var late = fell.Where(x => x.ReachedFraction >= 0.5).ToList();
        var early = fell.Where(x => x.Trial.HeldS < 1).ToList();
        if (late.Count >= 2 && 2 * late.Count > fell.Count)
            yield return Talk(pupil, late[0].Set, VisitTopic.Cause, "HoldsEndLate", [task, late.Count, fell.Count], [], late.Select(x => x.Trial.EntryId));
        else if (early.Count >= 2 && 2 * early.Count > fell.Count)
            yield return Talk(pupil, early[0].Set, VisitTopic.Cause, "HoldsEndEarly", [task, early.Count, fell.Count], [], early.Select(x => x.Trial.EntryId));
    }

    private static SuccessBand BandOf(SetEvidence set) => DecisionCoding.BandOf(set.Success.SuccessCount, set.Success.TrialCount);

    private static Conference Talk(
        PupilEvidence pupil, SetEvidence? set, VisitTopic topic, string name,
        IReadOnlyList<object> reason, IReadOnlyList<object> question, IEnumerable<Guid> entryIds) => new()
        {
            PupilId = pupil.PupilId,
            Label = pupil.Label,
            Topic = topic,
            TaskId = set?.TaskId,
            ReasonKey = "Reason" + name,
            ReasonArguments = reason,
            QuestionKey = "Question" + name,
            QuestionArguments = question,
            EntryIds = entryIds.Distinct().ToList(),
        };
}
