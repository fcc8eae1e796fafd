using System.Globalization;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Evidence.HoldCurves;
using Slantwise.Records.Evidence.SelfChecks;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Evidence.Tables;

/// <summary>Every table of the evidence pages, to be taken away.</summary>
public static class EvidenceTables
{
    private static readonly Dictionary<string, Func<UnitEvidence, IReadOnlyList<LessonRecord>, EvidenceTable>> Makers = new()
    {
        ["lessons"] = (unit, _) => UnitTables.Lessons(unit),
        ["levels"] = (unit, _) => Levels(unit),
        ["cues"] = (unit, _) => Cues(unit),
        ["decisions"] = (unit, _) => Decisions(unit),
        ["pupils"] = (unit, _) => Pupils(unit),
        ["sets"] = (unit, _) => Sets(unit),
        ["talks"] = (unit, _) => Talks(unit),
        ["notes"] = (unit, _) => Notes(unit),
        ["visits"] = (unit, _) => UnitTables.Visited(unit),
        ["patterns"] = (unit, _) => UnitTables.Patterns(unit),
        ["order"] = UnitTables.Order,
        ["growth"] = UnitTables.Growth,
        ["hold-growth"] = (unit, _) => UnitTables.HoldGrowths(unit),
        ["self-checks"] = (unit, _) => SelfChecked(unit),
        ["predictions"] = (_, lessons) => Predictions(lessons),
        ["observers"] = (_, lessons) => UnitTables.Observers(lessons),
        ["holds"] = (unit, _) => Holds(unit),
        ["level-chances"] = ChanceTables.Levels,
        ["pupil-chances"] = ChanceTables.Pupils,
    };

    /// <summary>The names of the tables, in the order of the pages.</summary>
    public static IReadOnlyList<string> Keys { get; } = [.. Makers.Keys];

    /// <summary>The tables that hold something only over several lessons.</summary>
    public static IReadOnlyList<string> UnitKeys { get; } = ["growth", "hold-growth"];

    /// <summary>A table by its name.</summary>
    /// <param name="key">One of <see cref="Keys"/>.</param>
    /// <param name="lessons">One lesson, or the lessons of one class.</param>
    /// <returns>None for another name.</returns>
    /// <exception cref="ArgumentException">Lessons of more than one class, or one lesson twice.</exception>
    public static EvidenceTable? Of(string key, IReadOnlyList<LessonRecord> lessons) =>
        Makers.TryGetValue(key, out var make) ? make(UnitEvidence.Of(lessons), lessons) : null;

    private static EvidenceTable Levels(UnitEvidence unit) => new("levels",
        ["task", "level", "name", "dose", "dose_kind", "chosen_sets", "pupils_tried", "pupils_started", "pupils_now", "successes", "tries", "low_fraction", "high_fraction"],
        [.. from task in unit.Tasks
            from l in task.Levels
            select (IReadOnlyList<object?>)[
                task.Name, l.LevelNumber, l.Name, l.Dose?.Amount, l.Dose?.Kind.ToString(), l.ChosenSetCount, l.TriedByPupilCount, l.StartPupilCount,
                l.LatestPupilCount, l.Success.SuccessCount, l.Success.TrialCount, l.Success.LowFraction, l.Success.HighFraction]]);

    private static EvidenceTable Cues(UnitEvidence unit) => new("cues",
        ["task", "cue", "text", "open_sets", "checked_sets", "pupils_open"],
        [.. from task in unit.Tasks
            from c in task.Cues
            select (IReadOnlyList<object?>)[task.Name, c.CueNumber, c.Text, c.UntickedSetCount, c.CheckedSetCount, c.UntickedPupilCount]]);

    private static EvidenceTable Decisions(UnitEvidence unit) => new("decisions",
        ["task", "after", "easier", "same", "harder", "decided"],
        [.. from part in unit.Tasks.Select(t => (t.Name, t.DecisionsAfter)).Append((Name: "", unit.Class.DecisionsAfter))
            from d in part.DecisionsAfter
            select (IReadOnlyList<object?>)[part.Name, d.Band.ToString(), d.EasierCount, d.SameCount, d.HarderCount, d.DecidedCount]]);

    private static EvidenceTable Pupils(UnitEvidence unit) => new("pupils",
        ["pupil", "task", "level", "sets", "successes", "tries", "low_fraction", "high_fraction"],
        [.. from pupil in unit.Pupils
            from task in pupil.Tasks
            from l in task.Levels
            select (IReadOnlyList<object?>)[
                pupil.Label, NameOf(unit, task.TaskNumber), l.LevelNumber, l.SetCount, l.Success.SuccessCount, l.Success.TrialCount, l.Success.LowFraction, l.Success.HighFraction]]);

    private static EvidenceTable Sets(UnitEvidence unit) => new("sets",
        ["day", "pupil", "task", "set", "level", "predicted_successes", "predicted_s", "successes", "tries", "times_s", "cues_open", "decision", "reason"],
        [.. from pupil in unit.Pupils
            from task in pupil.Tasks
            from s in task.Sets
            select (IReadOnlyList<object?>)[
                unit.Lessons[s.LessonNumber - 1].Date, pupil.Label, NameOf(unit, task.TaskNumber), s.SetNumber, s.LevelNumber, s.PredictedSuccessCount, s.PredictedHoldS,
                s.Success.SuccessCount, s.Success.TrialCount, Listed(s.Trials.Select(t => t.HeldS?.ToString("0.##", CultureInfo.InvariantCulture) ?? "?"), s.Trials.Any(t => t.HeldS is not null)),
                Listed(s.UntickedCueNumbers.Select(n => n.ToString(CultureInfo.InvariantCulture)), s.AreCuesChecked), s.Decision?.ToString(), s.DecisionReason]]);

    private static EvidenceTable Talks(UnitEvidence unit) => new("talks",
        ["day", "pupil", "topic", "form", "note"],
        [.. from pupil in unit.Pupils
            from v in pupil.Visits
            select (IReadOnlyList<object?>)[unit.Lessons.First(l => l.LessonId == v.LessonId).Date, pupil.Label, v.Topic.ToString(), v.Form.ToString(), v.Note]]);

    private static EvidenceTable Notes(UnitEvidence unit) => new("notes",
        ["day", "pupil", "task", "text"],
        [.. from pupil in unit.Pupils
            from n in pupil.Notes
            select (IReadOnlyList<object?>)[
                unit.Lessons.First(l => l.LessonId == n.LessonId).Date, pupil.Label, unit.Tasks.FirstOrDefault(t => t.TaskId == n.TaskId)?.Name ?? "", n.Text]]);

    private static EvidenceTable SelfChecked(UnitEvidence unit)
    {
        var checks = ClassSelfChecks.Of(unit.Pupils, unit.Tasks);
        return new("self-checks",
            ["task", "cue", "text", "same", "checks", "pupils", "blind", "low_fraction", "high_fraction", "ticked_not_seen", "seen_not_ticked", "kappa", "kappa_low", "kappa_high", "ac1", "ac1_low", "ac1_high"],
            [.. from c in checks.Cues.Append(checks.Whole)
                let a = c.Agreement
                select (IReadOnlyList<object?>)[
                    c.TaskName, c.CueNumber == 0 ? null : c.CueNumber, c.Text, a.Table.AgreedCount, a.Table.PairCount, a.PupilCount, c.BlindCount, a.AgreedRange?.LowFraction, a.AgreedRange?.HighFraction,
                    a.Balance.OverCount, a.Balance.UnderCount, a.Kappa.ValueFraction, a.KappaOverPupils.LowFraction, a.KappaOverPupils.HighFraction,
                    a.Gwet.ValueFraction, a.GwetOverPupils.LowFraction, a.GwetOverPupils.HighFraction]]);
    }

    private static EvidenceTable Predictions(IReadOnlyList<LessonRecord> lessons) => new("predictions",
        ["pupil", "compared_sets", "expected_sets", "says_where_half_low_fraction", "says_where_half_high_fraction", "side", "mostly_class"],
        [.. from p in ClassForesight.Of(lessons).Pupils
            select (IReadOnlyList<object?>)[p.Label, p.ComparedSetCount, p.Bias.SetCount, p.LowOfEvenFraction, p.HighOfEvenFraction, p.Sign.ToString(), p.IsMostlyClass]]);

    private static EvidenceTable Holds(UnitEvidence unit) => new("holds",
        ["task", "level", "name", "dose_s", "time_s", "held_fraction", "low_fraction", "high_fraction", "lasted", "ended", "stopped", "untimed_falls"],
        [.. from h in LevelHolds.Of(unit.Pupils, unit.Tasks)
            where h.HasCurve
            let level = unit.Tasks[h.TaskNumber - 1].Levels[h.LevelPlace]
            from s in h.Curve.Steps
            select (IReadOnlyList<object?>)[
                NameOf(unit, h.TaskNumber), level.LevelNumber, level.Name, h.DoseS, s.TimeS, s.HeldFraction, s.LowFraction, s.HighFraction, s.AtRiskCount, s.FallenCount, s.StoppedCount, h.UntimedFallCount]]);

    private static string NameOf(UnitEvidence unit, int taskNumber) => unit.Tasks[taskNumber - 1].Name;

    // Nothing known is an empty cell; nothing open, where cues were checked, is a word.
    private static string? Listed(IEnumerable<string> parts, bool isKnown)
    {
        if (!isKnown) return null;
        var listed = string.Join(' ', parts);
        return listed.Length == 0 ? "none" : listed;
    }
}
