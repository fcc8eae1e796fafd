using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

/// <summary>Whether a sheet can be printed or opened in a lesson, and what to point out.</summary>
public static class SheetCheck
{
    /// <summary>Looks at a sheet under a school's policy.</summary>
    /// <param name="sheet">What would be on the sheet.</param>
    /// <param name="policy">The school's policy: a level it does not allow cannot be put on a sheet.</param>
    /// <returns>Findings from the heading down. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(SheetContent sheet, SafetyPolicy policy)
    {
        var findings = new List<Finding>();
        NameCheck.Add(findings, sheet.Title, Limits.NameLength, "SheetTitleEmpty", "SheetTitleTooLong");
        if (sheet.Tasks.Count == 0) findings.Add(Finding.Refused("SheetHasNoTask", Limits.SheetTaskCount));
        if (sheet.Tasks.Count > Limits.SheetTaskCount) findings.Add(Finding.Refused("SheetHasTooManyTasks", sheet.Tasks.Count, Limits.SheetTaskCount));
        if (sheet.SetCount is < 1 or > Limits.SetCount) findings.Add(Finding.Refused("SheetSetCount", sheet.SetCount, Limits.SetCount));
        if (sheet.TrialCount is < 1 or > Limits.TrialCount) findings.Add(Finding.Refused("SheetTrialCount", sheet.TrialCount, Limits.TrialCount));
        if (!Enum.IsDefined(sheet.Predicts)) findings.Add(Finding.Refused("SheetPredictsUnknown"));
        foreach (var twice in sheet.Tasks.GroupBy(t => t.TaskId).Where(g => g.Count() > 1)) findings.Add(Finding.Refused("SheetTaskTwice", TextCheck.Label(twice.First().Name)));
        foreach (var task in sheet.Tasks) AddTask(findings, task, sheet.Predicts, policy);
        AddSharedLevels(findings, sheet.Tasks);
        return findings;
    }

    private static void AddTask(List<Finding> findings, SheetTask task, PredictionKind predicts, SafetyPolicy policy)
    {
        var label = TextCheck.Label(task.Name);
        NameCheck.Add(findings, task.Name, Limits.NameLength, "TaskNameEmpty", "TaskNameTooLong");
        TextCheck.Add(findings, task.Purpose, Limits.SentenceLength, "TaskPurposeTooLong", label);
        TextCheck.Add(findings, task.Caution, Limits.SentenceLength, "TaskCautionTooLong", label);
        CueCheck.Add(findings, label, task.Cues);
        if (task.Levels.Count == 0) findings.Add(Finding.Refused("SheetTaskHasNoLevel", label, Limits.SheetLevelCount));
        if (task.Levels.Count > Limits.SheetLevelCount) findings.Add(Finding.Refused("SheetTaskHasTooManyLevels", label, task.Levels.Count, Limits.SheetLevelCount));
        LevelCheck.Add(findings, label, task.Levels);
        for (var i = 0; i < task.Levels.Count; i++)
        {
            foreach (var removal in Offer.Removed(task.Levels[i], policy))
            {
                findings.Add(removal.HoldCapS is { } capS ? Finding.Refused("LevelHeadHoldTooLong", label, i + 1, capS) : NotAllowed(removal.Demand, label, i + 1));
            }
        }
        if (predicts == PredictionKind.HoldS && task.Levels.Any(l => l.Dose.Kind != DoseKind.HoldS)) findings.Add(Finding.Flagged("SheetPredictsHoldWithoutHold", label));
    }

    private static Finding NotAllowed(BodyDemand demand, string label, int number) => demand switch
    {
        BodyDemand.HeadWeight => Finding.Refused("LevelHeadWeightNotAllowed", label, number),
        BodyDemand.Inversion => Finding.Refused("LevelInversionNotAllowed", label, number),
        BodyDemand.Roll => Finding.Refused("LevelRollNotAllowed", label, number),
        BodyDemand.Spotting => Finding.Refused("LevelSpottingNotAllowed", label, number),
        _ => throw new InvalidOperationException($"A policy rules out {demand}, and there are no words for it."),
    };

    // A choice names a level by its id alone, so one id in two tasks could not be told apart.
    private static void AddSharedLevels(List<Finding> findings, IReadOnlyList<SheetTask> tasks)
    {
        var seen = new Dictionary<Guid, SheetTask>();
        foreach (var task in tasks)
        {
            foreach (var level in task.Levels)
            {
                if (!seen.TryAdd(level.Id, task) && seen[level.Id].TaskId != task.TaskId)
                {
                    findings.Add(Finding.Refused("LevelInTwoTasks", TextCheck.Label(level.Name), TextCheck.Label(seen[level.Id].Name), TextCheck.Label(task.Name)));
                }
            }
        }
    }
}
