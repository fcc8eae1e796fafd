namespace Slantwise.Desk.Pages.Units;

/// <summary>A task of a lesson while a unit is being planned.</summary>
/// <param name="taskId">The task.</param>
public sealed class UnitTaskDraft(Guid taskId)
{
    /// <summary>The task.</summary>
    public Guid TaskId => taskId;

    /// <summary>The outcomes it works towards.</summary>
    public HashSet<Guid> OutcomeIds { get; init; } = [];
}
