using Slantwise.Records.Safety;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>What a teacher says about a task's risk, while it is being typed.</summary>
/// <param name="taskId">The task.</param>
public sealed class TaskRiskDraft(Guid taskId)
{
    /// <summary>The task.</summary>
    public Guid TaskId { get; } = taskId;

    /// <summary>The teacher's level; none where the proposal stands.</summary>
    public RiskLevel? Level { get; set; }

    /// <summary>The teacher's lines; none where the proposals stand.</summary>
    public List<LineDraft>? Controls { get; set; }

    /// <summary>Begins to change the lines: from what is proposed.</summary>
    /// <param name="proposed">The proposals.</param>
    public void Take(IReadOnlyList<string> proposed) => Controls = [.. proposed.Select(p => new LineDraft(p))];

    /// <summary>As it is kept; lines that say no more than the proposals are not the teacher's.</summary>
    /// <param name="proposed">The proposals.</param>
    public TaskRisk ToTaskRisk(IReadOnlyList<string> proposed)
    {
        var typed = LineDraft.Typed(Controls ?? []);
        return new(TaskId, Level, typed.SequenceEqual(proposed) ? [] : typed);
    }
}
