namespace Slantwise.Records.Floor.Contracts;

/// <summary>What a pupil may be offered of a task, and how they do it.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="LevelIds">The levels, in the order to show them; a pupil's own numbers count them from 1. Empty where nothing is left.</param>
/// <param name="Adaptation">How this pupil does the task, in pupil words; none where as everybody does. Shown as part of the task, never with a label and never on another's screen.</param>
public sealed record BundleOffer(Guid TaskId, IReadOnlyList<Guid> LevelIds, string? Adaptation);
