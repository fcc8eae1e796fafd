using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence.Reviews;

/// <summary>A cue, pupil by pupil as each last looked at it: children are counted once, however many sets they made.</summary>
/// <param name="CueNumber">The cue, from 1.</param>
/// <param name="Text">The cue as the sheet says it.</param>
/// <param name="OpenPupilCount">Pupils who left it open the last time they checked cues.</param>
/// <param name="CheckedPupilCount">Pupils who checked it, n.</param>
public sealed record OpenCue(int CueNumber, string Text, int OpenPupilCount, int CheckedPupilCount)
{
    /// <summary>Below so many pupils nothing is said of a cue: our own choice, as with tries.</summary>
    public const int EnoughPupilCount = SuccessShare.EnoughTrialCount;

    // "Many": the range leaves no room for fewer than one in four. A working rule of ours, no finding.
    private const double ManyFraction = 0.25;

    /// <summary>The range of the share; none where nobody checked it.</summary>
    public WilsonInterval? Range => WilsonInterval.Of(OpenPupilCount, CheckedPupilCount, SuccessShare.RangeConfidenceFraction);

    /// <summary>Whether it stays open for many, and enough looked.</summary>
    public bool IsOpenForMany => CheckedPupilCount >= EnoughPupilCount && Range is { } range && range.LowFraction >= ManyFraction;

    /// <summary>A task's cues.</summary>
    /// <param name="task">The task's evidence.</param>
    /// <param name="pupils">The pupils' evidence of the same lessons.</param>
    public static IReadOnlyList<OpenCue> Of(TaskEvidence task, IReadOnlyList<PupilEvidence> pupils)
    {
        var latest = pupils.SelectMany(p => p.Tasks).Where(t => t.TaskId == task.TaskId)
            .Select(t => t.Sets.Where(s => s.AreCuesChecked).ToList()).Where(sets => sets.Count > 0).ToList();
        return [.. task.Cues.Select(cue =>
        {
            var last = latest.Select(sets => sets.LastOrDefault(s => s.TickedCueNumbers.Contains(cue.CueNumber) || s.UntickedCueNumbers.Contains(cue.CueNumber))).OfType<SetEvidence>().ToList();
            return new OpenCue(cue.CueNumber, cue.Text, last.Count(s => s.UntickedCueNumbers.Contains(cue.CueNumber)), last.Count);
        })];
    }
}
