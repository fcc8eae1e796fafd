using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>A level that a task could also have.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Level">The level.</param>
/// <param name="LikeId">The level of the task that it is a form of, with another dose; its own id where the task has it already.</param>
public sealed record CandidateLevel(Guid TaskId, Level Level, Guid LikeId);
