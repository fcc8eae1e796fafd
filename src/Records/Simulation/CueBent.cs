namespace Slantwise.Records.Simulation;

/// <summary>What is set for one cue instead of drawn.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="CueNumber">The cue, from 1.</param>
/// <param name="EaseLogits">How much easier than the level's dose it is to meet; far below 0 it is hardly ever met.</param>
public sealed record CueBent(Guid TaskId, int CueNumber, double EaseLogits);
