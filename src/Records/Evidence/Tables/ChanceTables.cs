using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Levels;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Tables;

/// <summary>Tables of what is believed of a class's next lesson. Restrictions are those of the latest lesson's day: a file has no today.</summary>
internal static class ChanceTables
{
    public static EvidenceTable Levels(UnitEvidence unit, IReadOnlyList<LessonRecord> lessons) => new("level-chances",
        ["task", "level", "name", "dose", "dose_kind", "tries", "middle_fraction", "low_fraction", "high_fraction", "mostly_assumed",
            "offered_pupils", "within_reach_pupils", "within_reach_least", "within_reach_most"],
        [.. from levels in LevelsOf(unit, lessons)
            from task in unit.Tasks
            from l in task.Levels
            where l is { LevelId: not null, LevelNumber: not null }
            let read = levels.Of(l.LevelId!.Value, ReachBand.Usual)!
            select (IReadOnlyList<object?>)[
                task.Name, l.LevelNumber, l.Name, l.Dose?.Amount, l.Dose?.Kind.ToString(), l.Success.TrialCount,
                Readable(read.Middle), read.Middle?.LowFraction, read.Middle?.HighFraction, read.Middle?.IsMostlyAssumed,
                read.Pupils.Count(p => p.IsOffered), read.Band?.PupilCount, read.Band?.LeastCount, read.Band?.MostCount]]);

    public static EvidenceTable Pupils(UnitEvidence unit, IReadOnlyList<LessonRecord> lessons) => new("pupil-chances",
        ["pupil", "task", "level", "offered", "successes", "tries", "chance_fraction", "low_fraction", "high_fraction", "mostly_assumed"],
        [.. from levels in LevelsOf(unit, lessons)
            from pupil in unit.Pupils
            from task in unit.Tasks
            from row in levels.OfPupil(pupil, task)
            where row.Level.LevelNumber is not null
            select (IReadOnlyList<object?>)[
                pupil.Label, task.Name, row.Level.LevelNumber, row.IsOffered, row.Success.SuccessCount, row.Success.TrialCount,
                Readable(row.Chance), row.Chance?.LowFraction, row.Chance?.HighFraction, row.Chance?.IsMostlyAssumed]]);

    // Where the range says too little the page names no number, and neither does the file; the range itself is honest.
    private static double? Readable(LevelChance? chance) => chance is { IsTooWide: false } ? chance.ChanceFraction : null;

    private static IEnumerable<ClassLevels> LevelsOf(UnitEvidence unit, IReadOnlyList<LessonRecord> lessons)
    {
        if (lessons.Count > 0)
            yield return ClassLevels.Of(lessons, unit.Tasks, unit.Pupils, ClassChances.Of(lessons, [], []), unit.Lessons[^1].Date);
    }
}
