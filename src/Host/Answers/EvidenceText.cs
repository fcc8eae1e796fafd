using System.Globalization;
using System.Text;
using Slantwise.Engines.Statistics;
using Slantwise.Host.Words;
using Slantwise.Records.Evidence;
using Slantwise.Records.Tasks;

namespace Slantwise.Host.Answers;

/// <summary>Evidence as lines for a terminal: whom to ask what, then tasks, then pupils by label. Every share has its n and range.</summary>
internal static class EvidenceText
{
    public static string Of(LessonEvidence evidence)
    {
        var title = string.Join(" · ", new[] { evidence.ClassName, HostWords.Day(evidence.Date), evidence.Title }.Where(t => t.Length > 0));
        return Of(title, evidence.Class, evidence.Conferences, evidence.Tasks, evidence.Pupils, evidence.UncountedEntryIds.Count);
    }

    public static string Of(UnitEvidence evidence)
    {
        var title = HostWords.Say("EvidenceOfUnit", evidence.ClassName, evidence.Lessons.Count, HostWords.Day(evidence.Lessons[0].Date), HostWords.Day(evidence.Lessons[^1].Date));
        return Of(title, evidence.Class, evidence.Conferences, evidence.Tasks, evidence.Pupils, evidence.UncountedEntryIds.Count);
    }

    private static string Of(
        string title, ClassEvidence whole, IReadOnlyList<Conference> talks, IReadOnlyList<TaskEvidence> tasks, IReadOnlyList<PupilEvidence> pupils, int uncountedCount)
    {
        var text = new StringBuilder();
        text.AppendLine(title);
        text.AppendLine(HostWords.Say("EvidenceWhole", whole.WrittenPupilCount, whole.PupilCount, whole.SetCount, whole.TrialCount));
        if (uncountedCount > 0) text.AppendLine(HostWords.SayCount("EvidenceUncounted", uncountedCount));
        if (whole.SetCount == 0) return text.Append(HostWords.Say("EvidenceEmpty")).ToString();

        Head(text, HostWords.SayCount("EvidenceTalks", talks.Count));
        foreach (var talk in talks)
            text.AppendLine($"  {talk.Label}: {talk.Reason(CultureInfo.CurrentUICulture)} {talk.Question(CultureInfo.CurrentUICulture)}");
        foreach (var task in tasks)
        {
            Head(text, task.Name.Length > 0 ? task.Name : HostWords.Say("EvidenceOffSheet"));
            foreach (var level in task.Levels) text.AppendLine("  " + Of(level));
            foreach (var cue in task.Cues) text.AppendLine("  " + Of(cue));
            if (Of(task.Predictions) is { } said) text.AppendLine("  " + said);
        }
        Head(text, HostWords.Say("EvidencePupils"));
        var names = tasks.ToDictionary(t => t.TaskId, t => t.Name);
        foreach (var pupil in pupils)
        {
            if (pupil.Tasks.Count == 0) text.AppendLine("  " + HostWords.Say(pupil.AbsentLessonIds.Count > 0 ? "EvidenceAbsent" : "EvidenceNothing", pupil.Label));
            foreach (var task in pupil.Tasks) text.AppendLine("  " + Of(pupil, task, names[task.TaskId]));
        }
        return text.ToString().TrimEnd();
    }

    private static void Head(StringBuilder text, string words) => text.AppendLine().AppendLine(words);

    private static string Of(LevelEvidence level)
    {
        if (level.LevelId is null) return HostWords.Say("EvidenceNoLevel", Of(level.Success));
        var dose = level.Dose is { } asked ? Of(asked) : "";
        var name = level.LevelNumber is { } number ? HostWords.Say("EvidenceLevel", number, level.Name, dose) : HostWords.Say("EvidenceLevelOffSheet");
        return level.TriedByPupilCount == 0
            ? HostWords.Say("EvidenceUntried", name)
            : $"{name}: {HostWords.SayCount("EvidenceTriedBy", level.TriedByPupilCount)}, {Of(level.Success)}";
    }

    private static string Of(CueEvidence cue) => cue.CheckedSetCount == 0
        ? HostWords.Say("EvidenceCueUnseen", cue.CueNumber, cue.Text)
        : HostWords.Say("EvidenceCue", cue.CueNumber, cue.Text, cue.UntickedSetCount, cue.CheckedSetCount);

    private static string? Of(PredictionEvidence predictions) => predictions switch
    {
        { Counts: { } counts } => HostWords.Say("EvidencePredicted" + counts.Direction, counts.SetCount, Math.Abs(counts.MeanErrorCount)),
        { Holds: { } holds } => HostWords.Say("EvidencePredictedHold" + holds.Direction, holds.SetCount, Math.Abs(holds.MeanErrorS)),
        _ => null,
    };

    private static string Of(PupilEvidence pupil, PupilTaskEvidence task, string name)
    {
        var levels = string.Join(", ", task.Sets.Select(s => s.SheetLevelNumber?.ToString(CultureInfo.CurrentCulture) ?? "–"));
        var success = SuccessShare.Of(task.Sets.SelectMany(s => s.Trials));
        var best = task.BestHold is { } hold ? HostWords.Say(hold.IsLowerBound ? "EvidenceHeldAtLeast" : "EvidenceHeld", hold.HeldS) : "";
        return HostWords.Say("EvidencePupil", pupil.Label, name, levels, Of(success)) + best;
    }

    private static string Of(SuccessShare success)
    {
        if (success.TrialCount == 0) return HostWords.Say("EvidenceNoTrial");
        var counts = HostWords.Say("EvidenceShare", success.SuccessCount, success.TrialCount);
        return success.HasEnoughTrials
            ? counts + HostWords.Say("EvidenceRange", success.LowFraction * 100, success.HighFraction * 100)
            : counts + HostWords.Say("EvidenceTooFew");
    }

    private static string Of(Dose dose) => HostWords.Say("Dose" + dose.Kind, dose.Amount);
}
