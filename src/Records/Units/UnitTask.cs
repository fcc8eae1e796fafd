namespace Slantwise.Records.Units;

/// <summary>A task in a lesson of a unit, and what it is there for.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="OutcomeIds">The outcomes it works towards; may be empty.</param>
public sealed record UnitTask(Guid TaskId, IReadOnlyList<Guid> OutcomeIds);
