namespace Slantwise.Records.Simulation;

/// <summary>What a simulated cue is like.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="CueNumber">The cue, from 1.</param>
/// <param name="EaseLogits">How much easier than the level's dose it is to meet.</param>
public sealed record CueTruth(Guid TaskId, int CueNumber, double EaseLogits);
