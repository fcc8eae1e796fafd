using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Records.Evidence.SelfChecks;

/// <summary>Pupils' own checks beside the teacher's, cue by cue and on the whole: about the cues and how they are read, not about pupils.</summary>
/// <param name="Whole">All cues of all tasks.</param>
/// <param name="Cues">Every cue checked by both at least once, in the order of the sheets.</param>
public sealed record ClassSelfChecks(CheckedCue Whole, IReadOnlyList<CheckedCue> Cues)
{
    /// <summary>How often the ranges hold the true figure.</summary>
    public const double RangeConfidenceFraction = SuccessShare.RangeConfidenceFraction;

    /// <summary>Up to this chance of so one-sided a difference between judges without a lean, a lean is named.</summary>
    public const double LeanChanceFraction = 1 - RangeConfidenceFraction;

    /// <summary>The self-checks of a class.</summary>
    /// <param name="pupils">Its pupils.</param>
    /// <param name="tasks">Its tasks.</param>
    public static ClassSelfChecks Of(IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks)
    {
        var seen = (
            from pupil in pupils
            from task in pupil.Tasks
            from set in task.Sets
            from check in set.Checks
            where check.IsTickedByPupil is not null
            select new Seen(pupil.PupilId, task.TaskNumber, check, set.CueEntryIds)).ToList();
        var cues = seen
            .GroupBy(s => (s.TaskNumber, s.Check.CueNumber))
            .OrderBy(g => g.Key.TaskNumber).ThenBy(g => g.Key.CueNumber)
            .Select(g =>
            {
                var task = tasks[g.Key.TaskNumber - 1];
                return CueOf(task.TaskNumber, task.Name, g.Key.CueNumber, task.Cues.FirstOrDefault(c => c.CueNumber == g.Key.CueNumber)?.Text ?? "", g.ToList());
            })
            .ToList();
        return new(CueOf(0, "", 0, "", seen), cues);
    }

    private static CheckedCue CueOf(int taskNumber, string taskName, int cueNumber, string text, IReadOnlyList<Seen> seen)
    {
        // One table a pupil, since the checks of one pupil hang together; an empty one where nothing was checked by both.
        var tables = seen.GroupBy(s => s.PupilId).Select(g => AgreementTable.Of(new TickAgreement(
            g.Count(s => s.IsTicked && s.Check.IsMet), g.Count(s => s.IsTicked && !s.Check.IsMet),
            g.Count(s => !s.IsTicked && s.Check.IsMet), g.Count(s => !s.IsTicked && !s.Check.IsMet)))).ToList();
        if (tables.Count == 0) tables = [AgreementTable.Of(default(TickAgreement))];
        return new(
            taskNumber, taskName, cueNumber, text, seen.Count(s => s.Check.IsBlind),
            JudgeAgreement.Of(tables, AgreementWeights.Identity(2), RangeConfidenceFraction),
            seen.SelectMany(s => s.CueEntryIds.Append(s.Check.EntryId)).Distinct().ToList());
    }

    private sealed record Seen(Guid PupilId, int TaskNumber, CheckEvidence Check, IReadOnlyList<Guid> CueEntryIds)
    {
        public bool IsTicked => Check.IsTickedByPupil == true;
    }
}
