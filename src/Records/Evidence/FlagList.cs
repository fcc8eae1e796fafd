using Slantwise.Records.Entries;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence;

/// <summary>Finds entries of one pupil that do not fit together.</summary>
internal static class FlagList
{
    public static IReadOnlyList<EvidenceFlag> Of(
        Guid pupilId, IReadOnlyList<LessonReading> lessons, IReadOnlyList<SetEvidence> sets, IReadOnlyList<TaskEvidence> tasks)
    {
        var names = tasks.ToDictionary(t => t.TaskId, t => t.Name);
        var flags = new List<EvidenceFlag>();
        foreach (var lesson in lessons)
        {
            var here = sets.Where(s => s.LessonId == lesson.LessonId).ToList();
            if (here.Count > 0 && lesson.AbsenceEntryIds.TryGetValue(pupilId, out var absence))
                flags.Add(new EvidenceFlag("FlagAbsentWithEntries", [], lesson.LessonId, null, null, here.SelectMany(s => s.EntryIds).Prepend(absence).ToList()));
            flags.AddRange(here.SelectMany(s => OfSet(s, names[s.TaskId])));
            flags.AddRange(here.GroupBy(s => s.TaskId).SelectMany(g => g.Zip(g.Skip(1), (a, b) => OfStep(a, b, names[g.Key])).OfType<EvidenceFlag>()));
        }
        return flags;
    }

    private static IEnumerable<EvidenceFlag> OfSet(SetEvidence set, string task)
    {
        EvidenceFlag Flag(string key, IReadOnlyList<Guid> entryIds, params object[] more) =>
            new(key, [task, set.SetNumber, .. more], set.LessonId, set.TaskId, set.SetNumber, entryIds);

        if (set.LevelId is null && set.Trials.Count > 0) yield return Flag("FlagTrialsWithoutLevel", set.Success.EntryIds, set.Trials.Count);
        if (set.ChoiceEntryId is { } choice && set.IsLevelOffered == false)
        {
            yield return set.SheetLevelNumber is { } number
                ? Flag("FlagLevelNotOffered", [choice], number)
                : Flag("FlagLevelNotOnSheet", [choice]);
        }
        if (set is { PredictionEntryId: { } prediction, PredictedSuccessCount: { } predicted, PlannedTrialCount: { } planned } && predicted > planned)
            yield return Flag("FlagPredictionAboveTrials", [prediction], predicted, planned);
        if (set.ImpossibleTimeEntryIds.Count > 0) yield return Flag("FlagImpossibleTime", set.ImpossibleTimeEntryIds, set.ImpossibleTimeEntryIds.Count);
        if (set.PlannedTrialCount is { } most && set.Trials.Count > most)
            yield return Flag("FlagMoreTrialsThanPlanned", set.Success.EntryIds, set.Trials.Count, most);
        if (set.Dose is not { Kind: DoseKind.HoldS } dose) yield break;
        foreach (var trial in set.Trials)
        {
            if (trial is not { HeldS: { } held }) continue;
            // Compared as the pupil writes them, to a tenth of a second.
            var reached = (decimal)Math.Round(held, 1) >= dose.Amount;
            if (reached != trial.IsSuccess)
                yield return Flag(trial.IsSuccess ? "FlagSuccessBelowDose" : "FlagDoseReachedNotTicked", [trial.EntryId], trial.TrialNumber, held, dose.Amount);
        }
    }

    private static EvidenceFlag? OfStep(SetEvidence set, SetEvidence next, string task)
    {
        if (next.SetNumber != set.SetNumber + 1 || set.SheetLevelNumber is not { } from || next.SheetLevelNumber is not { } to) return null;
        var isFollowed = set.Decision switch
        {
            NextLevel.Same => to == from,
            NextLevel.Harder => to > from,
            NextLevel.Easier => to < from,
            _ => true,
        };
        if (isFollowed) return null;
        var key = set.Decision switch
        {
            NextLevel.Harder => "FlagWroteHarder",
            NextLevel.Easier => "FlagWroteEasier",
            _ => "FlagWroteSame",
        };
        return new EvidenceFlag(
            key, [task, set.SetNumber, from, next.SetNumber, to], set.LessonId, set.TaskId, set.SetNumber,
            [set.ChoiceEntryId!.Value, set.DecisionEntryId!.Value, next.ChoiceEntryId!.Value]);
    }
}
