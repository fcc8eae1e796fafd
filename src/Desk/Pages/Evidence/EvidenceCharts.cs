using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Records.Evidence;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Charts of evidence, with descriptions made from their numbers.</summary>
public static class EvidenceCharts
{
    private const double WidthMm = 100;
    private const double SetMm = 9;

    /// <summary>A task's levels: successes with their ranges.</summary>
    public static Scene Levels(TaskEvidence task) => RangeChart.Of(
        [.. task.Levels.Select(level => new RangeRow(
            EvidenceText.Of(level), level.Success.ShareFraction, level.Success.LowFraction, level.Success.HighFraction,
            EvidenceText.Count(level.Success), EvidenceText.IsMuted(level.Success), EvidenceWords.Say("NotTried")))],
        WidthMm,
        new(EvidenceWords.Say("AxisNone"), EvidenceWords.Say("AxisHalf"), EvidenceWords.Say("AxisAll")),
        EvidenceWords.Say("LevelsShow", task.Name, Listed(task.Levels.Select(level =>
            $"{EvidenceText.Of(level)}: {EvidenceText.Count(level.Success)}"))));

    /// <summary>A task's cues: how often each was left open.</summary>
    public static Scene Cues(TaskEvidence task) => TickBars.Of(
        [.. task.Cues.Select(cue => new TickRow(
            EvidenceWords.Say("CueNamed", cue.CueNumber, cue.Text), cue.UntickedSetCount, cue.CheckedSetCount, Open(cue)))],
        WidthMm,
        EvidenceWords.Say("CuesShow", task.Name, Listed(task.Cues.Select(cue => $"{cue.Text}: {Open(cue)}"))));

    /// <summary>One pupil's levels and tries, set by set.</summary>
    /// <param name="pupil">The pupil's evidence of the task.</param>
    /// <param name="task">The class's evidence of the same task, for its levels.</param>
    /// <param name="lessons">The lessons of the evidence.</param>
    public static Scene Steps(PupilTaskEvidence pupil, TaskEvidence task, IReadOnlyList<UnitLesson> lessons)
    {
        var levelCount = Math.Max(1, task.Levels.Max(level => level.LevelNumber) ?? 1);
        var texts = pupil.Sets.Select(set => set.LessonNumber).Distinct()
            .Select(number => lessons.Single(lesson => lesson.LessonNumber == number).Date.ToString("d MMM", System.Globalization.CultureInfo.CurrentCulture));
        return LevelSteps.Of(
            [.. pupil.Sets.Select(set => new LevelStep(set.LevelNumber, [.. set.Trials.Select(trial => trial.IsSuccess)], set.LessonNumber))],
            levelCount,
            [.. texts],
            "?",
            Math.Max(60, 6 + pupil.Sets.Count * SetMm),
            EvidenceWords.Say("StepsShow", task.Name, EvidenceText.Path(pupil.Sets)));
    }

    /// <summary>How often a cue was left open, of the sets in which cues were checked.</summary>
    public static string Open(CueEvidence cue) => cue.CheckedSetCount == 0
        ? EvidenceWords.Say("CueUnchecked")
        : EvidenceWords.SayCount("CueOpen", cue.CheckedSetCount, cue.UntickedSetCount);

    private static string Listed(IEnumerable<string> parts) => string.Join("; ", parts);
}
