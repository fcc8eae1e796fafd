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
        NameCheck.Add(findings, task.Name, Limits.NameLength, "TaskNameEmpty", "TaskNameTooLong");
        TextCheck.Add(findings, task.Purpose, Limits.SentenceLength, "TaskPurposeTooLong", task.Name);
        TextCheck.Add(findings, task.Caution, Limits.SentenceLength, "TaskCautionTooLong", task.Name);
        CueCheck.Add(findings, task.Name, task.Cues);
        if (task.Levels.Count == 0) findings.Add(Finding.Flagged("TaskHasNoLevelYet", task.Name));
        LevelCheck.Add(findings, task.Name, task.Levels);
        return findings;
    }
}
