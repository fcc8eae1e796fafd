using Slantwise.Engines.Statistics.Reach;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.HoldCurves;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>Level by level and pupil by pupil: what a class did, and what is believed of its next lesson. To the teacher only.</summary>
public sealed class ClassLevels
{
    private readonly LevelOffers _offers;

    private ClassLevels(LevelOffers offers, IReadOnlyList<TaskEvidence> tasks, IReadOnlyList<PupilEvidence> pupils, ClassChances chances) =>
        (_offers, Tasks, Pupils, Chances) = (offers, tasks, pupils, chances);

    /// <summary>The tasks of all sheets.</summary>
    public IReadOnlyList<TaskEvidence> Tasks { get; }

    /// <summary>The class's pupils, by label.</summary>
    public IReadOnlyList<PupilEvidence> Pupils { get; }

    /// <summary>The chances behind it.</summary>
    public ClassChances Chances { get; }

    /// <summary>The levels of a class.</summary>
    /// <param name="records">Its lessons, any order; may be empty.</param>
    /// <param name="tasks">Their evidence by task.</param>
    /// <param name="pupils">Their evidence by pupil.</param>
    /// <param name="chances">The chances fitted to them.</param>
    /// <param name="day">The day for which restrictions are looked at.</param>
    public static ClassLevels Of(
        IReadOnlyList<LessonRecord> records, IReadOnlyList<TaskEvidence> tasks, IReadOnlyList<PupilEvidence> pupils, ClassChances chances, DateOnly day) =>
        new(LevelOffers.Of(records, day), tasks, pupils, chances);

    /// <summary>The sets a class made at one level, pupil by pupil.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="task">The task.</param>
    /// <param name="levelId">The level; none for sets in which none was written.</param>
    public static IEnumerable<SetEvidence> SetsAt(IEnumerable<PupilEvidence> pupils, TaskEvidence task, Guid? levelId) =>
        pupils.SelectMany(p => p.Tasks).Where(t => t.TaskId == task.TaskId).SelectMany(t => t.Sets).Where(s => s.LevelId == levelId);

    /// <summary>The task's cues in the sets at one level.</summary>
    /// <param name="pupils">The class's pupils.</param>
    /// <param name="task">The task.</param>
    /// <param name="levelId">The level.</param>
    public static IReadOnlyList<CueEvidence> CuesAt(IEnumerable<PupilEvidence> pupils, TaskEvidence task, Guid levelId) =>
        CueEvidence.Of(task.TaskId, [.. task.Cues.Select(c => c.Text)], [.. SetsAt(pupils, task, levelId)]);

    /// <summary>What is known of a level.</summary>
    /// <param name="levelId">The level.</param>
    /// <param name="band">The chances of success that count as within reach.</param>
    /// <returns>None for a level that neither a sheet nor an entry of the class has.</returns>
    public LevelReading? Of(Guid levelId, ReachBand band)
    {
        if (Tasks.FirstOrDefault(t => t.Levels.Any(l => l.LevelId == levelId)) is not { } task) return null;
        var place = task.Levels.ToList().FindIndex(l => l.LevelId == levelId);
        var offered = Pupils.Where(p => _offers.IsOffered(p.PupilId, levelId)).Select(p => OutlookOf(p.PupilId, task, levelId)).OfType<PupilOutlook>().ToList();
        return new LevelReading
        {
            Task = task,
            LevelPlace = place,
            IsOfferedToAnybody = _offers.IsOfferedToAnybody(levelId),
            Pupils = [.. Pupils.Select(p => At(p, task, place))],
            Levels = [.. task.Levels.Select((level, i) => (level, i)).Where(x => x.level.LevelNumber is not null || x.i == place).Select(x => BesideOf(levelId, x.i, x.level))],
            Band = Chances.TrialCount == 0 || offered.Count == 0 ? null : LevelBand.Of(offered, band),
            Holds = LevelHolds.Of(Pupils, [task with { Levels = [task.Levels[place]] }]).Select(h => h with { LevelPlace = place }).FirstOrDefault(),
            Cues = CuesAt(Pupils, task, levelId),
            Decisions = LevelDecisions.Of(SetsAt(Pupils, task, levelId)),
        };
    }

    /// <summary>A pupil at every level of a task.</summary>
    /// <param name="pupil">The pupil.</param>
    /// <param name="task">The task.</param>
    /// <returns>The levels of the sheets in their order, offered or not; then those on no sheet, and tries with no level written, where the pupil has any.</returns>
    public IReadOnlyList<PupilAtLevel> OfPupil(PupilEvidence pupil, TaskEvidence task) =>
        [.. task.Levels.Select((level, place) => At(pupil, task, place)).Where(row => row.Level.LevelNumber is not null || row.SetCount > 0)];

    private PupilAtLevel At(PupilEvidence pupil, TaskEvidence task, int place)
    {
        var level = task.Levels[place];
        var sets = SetsAt([pupil], task, level.LevelId).ToList();
        var isOffered = _offers.IsOffered(pupil.PupilId, level.LevelId);
        var chance = isOffered ? ChanceOf(pupil.PupilId, task, level.LevelId!.Value) : null;
        return new(
            pupil.PupilId, pupil.Label, place, level, sets.Count, SuccessShare.Of(sets.SelectMany(s => s.Trials)), BestHold.Of(sets), isOffered, LevelChance.Of(chance));
    }

    private LevelBeside BesideOf(Guid levelId, int place, LevelEvidence other)
    {
        var isOffered = _offers.IsOfferedToAnybody(other.LevelId);
        return new(
            place, other, isOffered,
            isOffered ? LevelChance.Of(Chances.Middle(other.LevelId!.Value, Chances.NextLesson)) : null,
            other.LevelId is { } otherId && otherId != levelId ? LevelDifference.Of(Chances.Contrast(levelId, otherId)) : null);
    }

    private PupilOutlook? OutlookOf(Guid pupilId, TaskEvidence task, Guid levelId) => ChanceOf(pupilId, task, levelId) is { } chance
        ? new PupilOutlook(Chances.AbilitySdLogits(pupilId, Chances.NextLesson), [new LevelOutlook(chance.Logit.MeanLogits, chance.Logit.SdLogits)])
        : null;

    // All levels of the task in one go: what a pupil costs is dear, one level more is cheap, and each is kept.
    private SuccessChance? ChanceOf(Guid pupilId, TaskEvidence task, Guid levelId)
    {
        var levels = _offers.LevelsOf(task.TaskId);
        var at = levels.ToList().FindIndex(l => l.Id == levelId);
        return at < 0 ? null : Chances.Chances(pupilId, levels, Chances.NextLesson)[at];
    }
}
