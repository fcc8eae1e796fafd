using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Growth;
using Slantwise.Records.Evidence.Orders;
using Slantwise.Records.Evidence.SelfChecks;
using Slantwise.Records.Evidence.Visits;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Tables;

/// <summary>The tables of what a unit says: lessons, order, growth, talks, patterns, observers.</summary>
internal static class UnitTables
{
    public static EvidenceTable Lessons(UnitEvidence unit)
    {
        var visits = ClassVisits.Of(unit.Pupils, unit.Lessons).Lessons.ToDictionary(l => l.Lesson.LessonId);
        return new("lessons",
            ["day", "title", "pupils_compared", "harder", "easier", "both_ways", "stayed", "two_levels", "predicted_sets", "more", "met", "fewer", "mean_error", "mean_distance", "error_unit", "pupils_present", "pupils_visited", "talks"],
            [.. from lesson in unit.Lessons
                let moves = LevelMoves.Of(unit.Pupils, lesson.LessonId)
                let sides = PredictionSides.Of(unit.Pupils.SelectMany(p => p.Tasks).SelectMany(t => t.Sets).Where(s => s.LessonId == lesson.LessonId))
                let said = unit.Class.PredictionsByLesson.FirstOrDefault(p => p.LessonId == lesson.LessonId)?.Predictions
                let talks = visits.GetValueOrDefault(lesson.LessonId)
                select (IReadOnlyList<object?>)[
                    lesson.Date, lesson.Title, moves.PupilCount, moves.HarderCount, moves.EasierCount, moves.BothCount, moves.StayedCount, moves.ExploredCount,
                    sides.SetCount, sides.MoreCount, sides.MetCount, sides.FewerCount,
                    said?.Counts?.MeanErrorCount ?? said?.Holds?.MeanErrorS, said?.Counts?.MeanAbsoluteErrorCount ?? said?.Holds?.MeanAbsoluteErrorS,
                    said?.Counts is not null ? "tries" : said?.Holds is not null ? "seconds" : null,
                    talks?.PresentCount, talks?.VisitedCount, talks?.Visits.Count]]);
    }

    public static EvidenceTable Order(UnitEvidence unit, IReadOnlyList<LessonRecord> lessons) => new("order",
        ["task", "easier", "harder", "pupils_both", "managed_harder", "managed_both", "low_fraction", "high_fraction", "only_easier", "only_harder", "chance_fraction",
            "model_low_fraction", "model_high_fraction", "mostly_assumed", "says", "task_pupils", "task_answers", "task_errors", "reproducibility", "marginal", "scalability"],
        [.. from task in TaskOrder.Of(unit.Pupils, unit.Tasks, ClassChances.Of(lessons, [], []))
            from p in task.Pairs
            select (IReadOnlyList<object?>)[
                unit.Tasks[task.TaskNumber - 1].Name, p.EasierNumber, p.HarderNumber, p.Counts.ComparedCount, p.ManagedHarderCount, p.ManagedBothCount, p.BothRange?.LowFraction, p.BothRange?.HighFraction,
                p.Counts.AsOrderedCount, p.Counts.AgainstCount, p.Counts.ChanceFraction, p.LowOfEvenFraction, p.HighOfEvenFraction, p.IsMostlyAssumed, p.Standing.ToString(),
                task.Whole.PupilCount, task.Whole.AnswerCount, task.Whole.ErrorCount, task.Whole.ReproducibilityFraction, task.Whole.MarginalFraction, task.Whole.ScalabilityFraction]]);

    public static EvidenceTable Growth(UnitEvidence unit, IReadOnlyList<LessonRecord> lessons)
    {
        var growth = SharedGrowth.Of(ClassChances.Of(lessons, [], []), unit.Pupils);
        return new("growth",
            ["lessons", "tries", "pupils_returned", "where_half_now_fraction", "low_fraction", "high_fraction", "mostly_assumed"],
            growth is null ? [] : [[growth.LessonCount, growth.TrialCount, growth.ReturnedPupilCount, growth.MeanOfEvenFraction, growth.LowOfEvenFraction, growth.HighOfEvenFraction, growth.IsMostlyAssumed]]);
    }

    public static EvidenceTable HoldGrowths(UnitEvidence unit) => new("hold-growth",
        ["task", "level", "name", "day", "pupils", "timed", "stopped", "mean_s", "pupils_returned", "factor_a_lesson", "factor_low", "factor_high", "factor_doubled_seconds", "factor_doubled_logs"],
        [.. from h in HoldGrowth.Of(unit.Pupils, unit.Tasks)
            let level = unit.Tasks[h.TaskNumber - 1].Levels[h.LevelPlace]
            // One or two children's growth is theirs, and is not given.
            let own = h.Own.PupilCount >= HoldGrowth.EnoughPupilCount ? h.Own : default
            from l in h.Lessons
            select (IReadOnlyList<object?>)[
                unit.Tasks[h.TaskNumber - 1].Name, level.LevelNumber, level.Name, unit.Lessons[l.LessonNumber - 1].Date, l.PupilCount, l.TimedCount, l.StoppedCount, l.MeanS,
                h.Own.PupilCount, Factor(own.GrowthNats), Factor(own.LowNats), Factor(own.HighNats), 1 + h.Curve.InSeconds?.PerDoublingFraction, 1 + h.Curve.InLogs?.PerDoublingFraction]]);

    public static EvidenceTable Visited(UnitEvidence unit) => new("visits",
        ["pupil", "lessons_attended", "lessons_waited", "talks", "asked", "described", "corrected", "valued", "decision", "cue", "cause", "safety"],
        [.. from p in ClassVisits.Of(unit.Pupils, unit.Lessons).Pupils
            select (IReadOnlyList<object?>)[
                p.Label, p.AttendedCount, p.WaitedCount, p.Visits.Count,
                .. Enum.GetValues<VisitForm>().Select(f => (object?)p.Visits.Count(v => v.Form == f)),
                .. Enum.GetValues<VisitTopic>().Select(t => (object?)p.Visits.Count(v => v.Topic == t))]]);

    public static EvidenceTable Patterns(UnitEvidence unit)
    {
        var sets = unit.Pupils.SelectMany(p => p.Tasks).SelectMany(t => t.Sets).ToList();
        return new("patterns",
            ["task", "pattern", "sets", "goes_with_set"],
            [.. from part in unit.Tasks.Select(t => (t.Name, Sets: sets.Where(s => s.TaskId == t.TaskId))).Append((Name: "", Sets: sets))
                from p in DecisionEvidence.Of(part.Sets).Patterns
                select (IReadOnlyList<object?>)[
                    part.Name, p.Pattern.ToString(), p.SetCount,
                    p.Pattern == Engines.Statistics.DecisionPattern.NoEvidence ? null : Engines.Statistics.DecisionConsistency.Of([p.Pattern]).ConsistentCount == 1]]);
    }

    public static EvidenceTable Observers(IReadOnlyList<LessonRecord> lessons) => new("observers",
        ["cues", "pupils", "checks", "same", "low_fraction", "high_fraction", "both_met", "only_first", "only_second", "neither_met", "kappa", "ac1"],
        ObserverChecks.Of(lessons) is not { } o ? [] : [[
            o.CueCount, o.Agreement.PupilCount, o.Agreement.Table.PairCount, o.Agreement.Table.AgreedCount, o.Agreement.AgreedRange?.LowFraction, o.Agreement.AgreedRange?.HighFraction,
            o.Agreement.Table[1, 1], o.Agreement.Table[1, 0], o.Agreement.Table[0, 1], o.Agreement.Table[0, 0], o.Agreement.Kappa.ValueFraction, o.Agreement.Gwet.ValueFraction]]);

    private static double? Factor(double? nats) => nats is { } value ? Math.Exp(value) : null;
}
