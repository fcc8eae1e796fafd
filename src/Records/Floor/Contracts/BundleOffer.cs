namespace Slantwise.Records.Floor.Contracts;

/// <summary>What a pupil may be offered of a task.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="LevelIds">The levels, in the order to show them; a pupil's own numbers count them from 1. Empty where nothing is left.</param>
public sealed record BundleOffer(Guid TaskId, IReadOnlyList<Guid> LevelIds);
