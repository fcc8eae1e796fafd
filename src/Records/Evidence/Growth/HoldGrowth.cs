using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Growth;

/// <summary>How the times of one level changed from lesson to lesson, for the class.</summary>
/// <param name="TaskNumber">The task in the evidence, from 1.</param>
/// <param name="LevelPlace">The level's place in the task's evidence, from 0.</param>
/// <param name="Lessons">The lessons in which it was timed, earliest first; two or more.</param>
/// <param name="Own">Each pupil beside themselves: who chose the level when moves nothing.</param>
/// <param name="Curve">The class's means lesson by lesson as a power of practice, fitted in two ways.</param>
/// <remarks>Times of different levels are never joined: a harder level is a shorter hold.</remarks>
public sealed record HoldGrowth(int TaskNumber, int LevelPlace, IReadOnlyList<LessonHolds> Lessons, ClassGrowth Own, LearningCurve Curve)
{
    /// <summary>Under this many pupils timed in two lessons or more no growth is given: it would be that of one or two children. A working rule, no source.</summary>
    public const int EnoughPupilCount = 5;

    /// <summary>Whether half of the times or more were held to the dose: stopped there, they could not grow.</summary>
    public bool IsMostlyStopped => 2 * Lessons.Sum(l => l.StoppedCount) >= Lessons.Sum(l => l.TimedCount);

    /// <summary>The growth of every level that was timed in two lessons or more, in the order of the sheets.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="tasks">Its tasks.</param>
    public static IReadOnlyList<HoldGrowth> Of(IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks) => (
        from task in tasks
        from level in task.Levels.Select((level, place) => (Level: level, Place: place))
        where level.Level is { LevelId: not null, Dose.Kind: DoseKind.HoldS }
        let growth = OfLevel(pupils, task, level.Level, level.Place)
        where growth is not null
        select growth).ToList();

    private static HoldGrowth? OfLevel(IReadOnlyList<PupilEvidence> pupils, TaskEvidence task, LevelEvidence level, int place)
    {
        var holds = (
            from pupil in pupils.Select((pupil, index) => (Pupil: pupil, Index: index))
            from own in pupil.Pupil.Tasks
            where own.TaskId == task.TaskId
            from set in own.Sets
            where set.LevelId == level.LevelId
            from trial in set.Trials
            where trial.HeldS > 0
            group trial by (pupil.Index, set.LessonNumber) into own
            select (own.Key.Index, own.Key.LessonNumber, Trials: own.ToList(), MiddleS: Middle([.. own.Select(t => t.HeldS!.Value).Order()]))).ToList();
        var lessons = holds.GroupBy(h => h.LessonNumber).OrderBy(g => g.Key).Select(g => new LessonHolds(
            g.Key, g.Count(), g.Sum(h => h.Trials.Count), g.Sum(h => h.Trials.Count(t => t.IsSuccess)), g.Average(h => h.MiddleS))).ToList();
        return lessons.Count < 2 ? null : new(
            task.TaskNumber, place, lessons,
            ClassGrowth.Of([.. holds.Select(h => new LessonTime(h.Index, h.LessonNumber, h.MiddleS))], SuccessShare.RangeConfidenceFraction),
            LearningCurve.Fit([.. lessons.Select(l => new PracticePoint(l.LessonNumber, l.MeanS))]));
    }

    private static double Middle(IReadOnlyList<double> sorted) => (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
}
