namespace Slantwise.Records.Simulation;

/// <summary>What a simulated pupil is like; no class ever shows it.</summary>
public sealed record PupilTruth
{
    /// <summary>The pupil.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>Ability before the first lesson, by family of tasks.</summary>
    public required IReadOnlyDictionary<string, double> AbilityLogits { get; init; }

    /// <summary>Gain from one lesson to the next.</summary>
    public required double LearningLogits { get; init; }

    /// <summary>What each trial takes from the later ones of a lesson.</summary>
    public required double FatigueLogits { get; init; }

    /// <summary>How far the pupil overrates themself.</summary>
    public required double BiasLogits { get; init; }

    /// <summary>The success share the pupil looks for.</summary>
    public required double TasteFraction { get; init; }

    /// <summary>How often the pupil takes the level that suits best.</summary>
    public required double SteadinessFraction { get; init; }

    /// <summary>How often an unmet cue stays unticked.</summary>
    public required double HonestyFraction { get; init; }

    /// <summary>How often the pupil decides for another level.</summary>
    public required double ChangeFraction { get; init; }
}
