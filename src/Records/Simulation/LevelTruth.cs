using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>What a simulated level is like; no class ever shows it.</summary>
public sealed record LevelTruth
{
    /// <summary>The task it belongs to.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>The level.</summary>
    public required Level Level { get; init; }

    /// <summary>The family whose ability it draws on.</summary>
    public required string Family { get; init; }

    /// <summary>How hard it is with its dose: a pupil of this ability succeeds half the time.</summary>
    public required double DifficultyLogits { get; init; }

    /// <summary>How much it draws pupils for other reasons than difficulty.</summary>
    public required double PullLogits { get; init; }

    /// <summary>The shape of the hold times: what a hold e times as long costs.</summary>
    public required double HoldSlopeLogits { get; init; }

    /// <summary>How hard a hold of one second is: the median hold is exp((ability − this) / slope) seconds. For other doses, the difficulty.</summary>
    public double OneSecondLogits => Level.Dose.Kind == DoseKind.HoldS
        ? DifficultyLogits - (HoldSlopeLogits * PortableMath.Log((double)Level.Dose.Amount))
        : DifficultyLogits;
}
