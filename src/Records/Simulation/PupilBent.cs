namespace Slantwise.Records.Simulation;

/// <summary>What is set for one pupil instead of drawn; whatever is none stays drawn.</summary>
public sealed record PupilBent
{
    /// <summary>Ability in every family of tasks.</summary>
    public double? AbilityLogits { get; init; }

    /// <summary>How far the pupil overrates themself.</summary>
    public double? BiasLogits { get; init; }

    /// <summary>The success share the pupil looks for, above 0 and below 1.</summary>
    public double? TasteFraction { get; init; }

    /// <summary>How often an unmet cue stays unticked, 0 to 1.</summary>
    public double? HonestyFraction { get; init; }

    /// <summary>How often the pupil decides for another level, 0 to 1.</summary>
    public double? ChangeFraction { get; init; }
}
