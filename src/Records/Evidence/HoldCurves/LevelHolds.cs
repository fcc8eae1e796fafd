using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Holds;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.HoldCurves;

/// <summary>How long a class holds one level, as far as somebody timed it.</summary>
/// <param name="TaskNumber">The task in the evidence, from 1.</param>
/// <param name="LevelPlace">The level's place in the task's evidence, from 0.</param>
/// <param name="DoseS">How long a hold had to last; there it was stopped.</param>
/// <param name="Curve">The share still held after each time; where some falls were not timed they count as ended somewhere before the dose, for leaving them out would flatter.</param>
/// <param name="UntimedFallCount">Tries that missed the dose and were not timed.</param>
/// <param name="IsKnown">Whether the times known are enough to place those untimed falls; otherwise the curve is the one without them, and not to be shown.</param>
/// <param name="Start">How many got into the position at all; a fall within the first second did not.</param>
public sealed record LevelHolds(int TaskNumber, int LevelPlace, double DoseS, HoldCurve Curve, int UntimedFallCount, bool IsKnown, HoldStart Start)
{
    /// <summary>Holds from which a curve is drawn. Below, a single try moves it by more than a tenth.</summary>
    public const int EnoughHoldCount = 10;

    /// <summary>A fall before this is no short hold but no hold. Common practice, no source.</summary>
    public const double FirstMomentS = 1;

    /// <summary>Tries whose length is known, exactly or as “at least the dose”.</summary>
    public int TimedCount => IsKnown ? Curve.HoldCount - UntimedFallCount : Curve.HoldCount;

    /// <summary>Whether there is a curve worth drawing: tries of known length enough, and a fall among them.</summary>
    public bool HasCurve => IsKnown && TimedCount >= EnoughHoldCount && Curve.FallenCount > UntimedFallCount;

    /// <summary>The holds of every level whose dose is a time and which somebody tried, in the order of the sheets.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="tasks">Its tasks.</param>
    public static IReadOnlyList<LevelHolds> Of(IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks) => (
        from task in tasks
        from level in task.Levels.Select((level, place) => (Level: level, Place: place))
        where level.Level.Dose is { Kind: DoseKind.HoldS, Amount: > 0 }
        let holds = OfLevel(pupils, task, level.Level, level.Place)
        where holds.TimedCount + holds.UntimedFallCount > 0
        select holds).ToList();

    private static LevelHolds OfLevel(IReadOnlyList<PupilEvidence> pupils, TaskEvidence task, LevelEvidence level, int place)
    {
        var doseS = (double)level.Dose!.Amount;
        var tries = (
            from pupil in pupils.Select((pupil, index) => (Pupil: pupil, Index: index))
            from own in pupil.Pupil.Tasks
            where own.TaskId == task.TaskId
            from set in own.Sets
            where set.LevelId == level.LevelId
            from trial in set.Trials
            select (pupil.Index, Attempt: new HoldAttempt(trial.HeldS, doseS, trial.IsSuccess))).ToList();
        var untimed = tries.Count(t => t.Attempt is { HasReachedDose: false, HeldS: null });
        var placed = untimed > 0 ? SpanHolds.Of(tries, doseS) : null;
        return new(
            task.TaskNumber, place, doseS,
            placed ?? KaplanMeier.Of([.. tries.Select(t => HoldTime.Of(t.Attempt, t.Index)).OfType<HoldTime>()], SuccessShare.RangeConfidenceFraction),
            untimed, untimed == 0 || placed is not null,
            HoldStart.Of([.. tries.Select(t => t.Attempt)], FirstMomentS));
    }
}
