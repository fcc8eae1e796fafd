using Slantwise.Records.Checks;

namespace Slantwise.Records.Tasks.Files;

/// <summary>What a task file was read as.</summary>
/// <param name="FileName">The file, as the reader knows it.</param>
/// <param name="Task">The task; none if a finding refuses the file.</param>
/// <param name="Findings">What there is to say about the file, in its order; empty if nothing.</param>
public sealed record TaskReading(string FileName, MovementTask? Task, IReadOnlyList<Finding> Findings);
