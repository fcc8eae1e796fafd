using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>A simulated class as files, for studies and for programs in other languages.</summary>
/// <remarks>
/// <c>entries.jsonl</c> holds every entry; the tables hold what stands after corrections. In the tables a pupil is its code, a task its number,
/// a level its running number over all tasks (<c>levels.csv</c> names them), a lesson its number; decimals have a point, an empty cell says nothing.
/// </remarks>
public static class SimulationFiles
{
    /// <summary>Writes the files.</summary>
    /// <param name="simulated">What a simulation gave.</param>
    /// <returns>Text by file name: <c>entries.jsonl</c>, <c>trials.csv</c>, <c>predictions.csv</c>, <c>pupils.csv</c>, <c>levels.csv</c>, <c>truth.csv</c>.</returns>
    public static IReadOnlyDictionary<string, string> Of(SimulatedClass simulated)
    {
        var keys = new SimulationKeys(simulated);
        var current = simulated.Entries.GroupBy(entry => entry.LessonId).SelectMany(EntryLog.Current).ToList();
        var present = current.Where(entry => entry.Fact is Presence { IsPresent: true }).ToLookup(entry => entry.PupilId);
        var sets = Sets(current, keys).ToList();
        return new SortedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["entries.jsonl"] = EntryFile.WriteJsonLines(simulated.Entries),
            ["trials.csv"] = Table(
                ["pupil", "level", "task", "dose", "lesson", "set", "trial", "success", "held_s", "predicted_count", "predicted_hold_s"],
                sets.SelectMany(set => set.Trials.Select(trial => (object?[])
                [
                    set.Pupil, set.Level.Number, set.Level.TaskNumber, set.Level.Truth.Level.Dose.Amount, set.Lesson, set.Set,
                    trial.Number, trial.Fact.IsSuccess ? 1 : 0, trial.Fact.HeldS, set.Prediction?.SuccessCount, set.Prediction?.HoldS,
                ]))),
            ["predictions.csv"] = Table(
                ["pupil", "level", "task", "lesson", "set", "predicted_count", "predicted_hold_s", "trials", "successes", "best_hold_s", "decision"],
                sets.Where(set => set.Prediction is not null).Select(set => (object?[])
                [
                    set.Pupil, set.Level.Number, set.Level.TaskNumber, set.Lesson, set.Set, set.Prediction!.SuccessCount, set.Prediction.HoldS,
                    set.Trials.Count, set.Trials.Count(trial => trial.Fact.IsSuccess), set.Trials.Max(trial => trial.Fact.HeldS),
                    set.Decision?.Next.ToString().ToLowerInvariant(),
                ])),
            ["pupils.csv"] = Table(
                ["pupil", "id", "lessons_present", "restrictions"],
                simulated.Plan.Pupils.Select(pupil => (object?[])
                [
                    pupil.Code, pupil.Id, present[pupil.Id].Count(),
                    string.Join(' ', simulated.Plan.Restrictions.Where(r => r.PupilId == pupil.Id).Select(r => r.Without)),
                ])),
            ["levels.csv"] = Table(
                ["level", "task", "task_name", "number_in_task", "id", "name", "dose_kind", "dose", "demands"],
                keys.Levels.Select(key => (object?[])
                [
                    key.Number, key.TaskNumber, key.TaskName, key.NumberInTask, key.Truth.Level.Id, key.Truth.Level.Name,
                    key.Truth.Level.Dose.Kind, key.Truth.Level.Dose.Amount, string.Join(' ', key.Truth.Level.Demands),
                ])),
            ["truth.csv"] = Table(["kind", "key", "name", "value"], Truths(simulated, keys)),
        };
    }

    private static IEnumerable<object?[]> Truths(SimulatedClass simulated, SimulationKeys keys)
    {
        foreach (var pupil in simulated.Truth.Pupils)
        {
            var code = keys.CodeOf(pupil.PupilId);
            foreach (var (family, ability) in pupil.AbilityLogits) yield return ["pupil", code, $"ability_{keys.FamilyNumber(family)}", ability];
            yield return ["pupil", code, "learning", pupil.LearningLogits];
            yield return ["pupil", code, "fatigue", pupil.FatigueLogits];
            yield return ["pupil", code, "bias", pupil.BiasLogits];
            yield return ["pupil", code, "taste", pupil.TasteFraction];
            yield return ["pupil", code, "steadiness", pupil.SteadinessFraction];
            yield return ["pupil", code, "honesty", pupil.HonestyFraction];
            yield return ["pupil", code, "change", pupil.ChangeFraction];
        }
        foreach (var key in keys.Levels)
        {
            yield return ["level", key.Number, "family", keys.FamilyNumber(key.Truth.Family)];
            yield return ["level", key.Number, "difficulty", key.Truth.DifficultyLogits];
            yield return ["level", key.Number, "pull", key.Truth.PullLogits];
            if (key.Truth.Level.Dose.Kind == DoseKind.HoldS) yield return ["level", key.Number, "hold_slope", key.Truth.HoldSlopeLogits];
        }
        foreach (var cue in simulated.Truth.Cues) yield return ["cue", $"{keys.TaskNumber(cue.TaskId)}.{cue.CueNumber}", "ease", cue.EaseLogits];
    }

    private static IEnumerable<SetOnPaper> Sets(IEnumerable<Entry> current, SimulationKeys keys) => current
        .Where(entry => entry is { PupilId: not null, TaskId: not null, SetNumber: not null })
        .GroupBy(entry => (entry.PupilId, entry.TaskId, entry.LessonId, entry.SetNumber))
        .Select(set => new SetOnPaper(
            keys.CodeOf(set.Key.PupilId!.Value),
            keys.LevelOf(set.Select(e => e.Fact).OfType<Choice>().Single().LevelId),
            keys.LessonNumber(set.Key.LessonId),
            set.Key.SetNumber!.Value,
            set.Select(e => e.Fact).OfType<Prediction>().SingleOrDefault(),
            set.Where(e => e.Fact is Trial).OrderBy(e => e.TrialNumber).Select(e => (e.TrialNumber!.Value, (Trial)e.Fact)).ToList(),
            set.Select(e => e.Fact).OfType<Decision>().SingleOrDefault()))
        .OrderBy(set => set.Lesson).ThenBy(set => set.Pupil, StringComparer.Ordinal).ThenBy(set => set.Level.TaskNumber).ThenBy(set => set.Set);

    private static string Table(string[] heading, IEnumerable<object?[]> rows) => string.Concat(
        rows.Prepend(heading).Select(row => string.Join(',', row.Select(cell => Quoted(Convert.ToString(cell, CultureInfo.InvariantCulture) ?? ""))) + "\n"));

    // Source: [RFC4180] section 2, but for the line feed alone at the end of a line.
    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") ? $"\"{cell.Replace("\"", "\"\"")}\"" : cell;

    private sealed record SetOnPaper(
        string Pupil, LevelKey Level, int Lesson, int Set, Prediction? Prediction, IReadOnlyList<(int Number, Trial Fact)> Trials, Decision? Decision);
}
