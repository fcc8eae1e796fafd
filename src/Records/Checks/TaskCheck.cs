using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

/// <summary>Whether a task can be kept, and what to point out.</summary>
public static class TaskCheck
{
    /// <summary>Looks at a task by itself.</summary>
    /// <param name="task">The task as it is being edited. It may still lack levels and cues; both are flagged.</param>
    /// <returns>Findings in the order of the task's parts. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(MovementTask task)
    {
        var findings = new List<Finding>();
        var label = TextCheck.Label(task.Name);
        NameCheck.Add(findings, task.Name, Limits.NameLength, "TaskNameEmpty", "TaskNameTooLong");
        TextCheck.Add(findings, task.Purpose, Limits.SentenceLength, "TaskPurposeTooLong", label);
        TextCheck.Add(findings, task.Caution, Limits.SentenceLength, "TaskCautionTooLong", label);
        CueCheck.Add(findings, label, task.Cues);
        if (task.Levels.Count == 0) findings.Add(Finding.Flagged("TaskHasNoLevelYet", label));
        LevelCheck.Add(findings, label, task.Levels);
        return findings;
    }
}
