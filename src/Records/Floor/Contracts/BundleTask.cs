namespace Slantwise.Records.Floor.Contracts;

/// <summary>A task in a bundle.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Name">Its name.</param>
/// <param name="Purpose">What the pupil sets out to do; may be empty.</param>
/// <param name="Cues">The cues to tick, in order.</param>
/// <param name="Caution">The usual caution; may be empty.</param>
/// <param name="Levels">The levels that at least one pupil of the bundle may be offered, in the teacher's order.</param>
public sealed record BundleTask(Guid TaskId, string Name, string Purpose, IReadOnlyList<string> Cues, string Caution, IReadOnlyList<BundleLevel> Levels);
