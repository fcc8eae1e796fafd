namespace Slantwise.Records.Simulation;

/// <summary>What is set for one level instead of drawn; whatever is none stays drawn.</summary>
public sealed record LevelBent
{
    /// <summary>How hard it is: a pupil of this ability succeeds half the time.</summary>
    public double? DifficultyLogits { get; init; }

    /// <summary>How much it draws pupils for other reasons than difficulty; -40 and nobody ever takes it.</summary>
    public double PullLogits { get; init; }
}
