using Slantwise.Records.Safety;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>A risk page while it is being written.</summary>
public sealed class RiskDraft
{
    private readonly IReadOnlyList<TaskRisk> _others;

    /// <summary>Begins with what is kept.</summary>
    /// <param name="notes">What was written before.</param>
    /// <param name="taskIds">The tasks of the sheet.</param>
    public RiskDraft(RiskNotes notes, IReadOnlyList<Guid> taskIds)
    {
        // A task that is not on the sheet today may be again tomorrow.
        _others = [.. notes.Tasks.Where(t => !taskIds.Contains(t.TaskId))];
        Tasks = [.. taskIds.Select(id =>
        {
            var own = notes.Tasks.FirstOrDefault(t => t.TaskId == id);
            return new TaskRiskDraft(id) { Level = own?.Level, Controls = own is { Controls.Count: > 0 } ? [.. own.Controls.Select(c => new LineDraft(c))] : null };
        })];
        Checks = [.. notes.EquipmentChecks.Select(c => new LineDraft(c))];
        (Notes, ShowsNames) = (notes.Notes, notes.ShowsNames);
    }

    /// <summary>The tasks, in the order of the sheet.</summary>
    public IReadOnlyList<TaskRiskDraft> Tasks { get; }

    /// <summary>What the teacher looks at beyond what is proposed.</summary>
    public List<LineDraft> Checks { get; }

    /// <summary>Anything else.</summary>
    public string Notes { get; set; }

    /// <summary>Whether first names are on the page.</summary>
    public bool ShowsNames { get; set; }

    /// <summary>As it is kept.</summary>
    /// <param name="proposedOf">What is proposed for a task.</param>
    public RiskNotes ToNotes(Func<Guid, IReadOnlyList<string>> proposedOf) => new()
    {
        Tasks = [.. Tasks.Select(t => t.ToTaskRisk(proposedOf(t.TaskId))).Where(t => t.Level is not null || t.Controls.Count > 0), .. _others],
        EquipmentChecks = LineDraft.Typed(Checks),
        Notes = (Notes ?? "").Trim(),
        ShowsNames = ShowsNames,
    };
}
