namespace Slantwise.Records.Simulation;

/// <summary>What simulated pupils are drawn from. The defaults are invented and plausible; <c>docs/simulator.md</c> gives the reasons.</summary>
public sealed record PupilPopulation
{
    /// <summary>The spread of ability between pupils, more than 0.</summary>
    public double AbilitySdLogits { get; init; } = 1.2;

    /// <summary>The share of that variance which a pupil's abilities have in common, 0 to 1.</summary>
    public double SharedAbilityFraction { get; init; } = 0.5;

    /// <summary>How much a pupil gains from one lesson to the next, on average.</summary>
    public double LearningLogits { get; init; } = 0.15;

    /// <summary>The spread of that gain between pupils.</summary>
    public double LearningSdLogits { get; init; } = 0.05;

    /// <summary>How much each trial takes from the later ones of a lesson.</summary>
    public double FatigueLogits { get; init; } = 0.012;

    /// <summary>How far pupils overrate themselves, on average; below 0 they underrate themselves.</summary>
    /// <remarks>Children mostly overrate themselves in physical education. Source: [Kolovelonis2012].</remarks>
    public double BiasLogits { get; init; } = 0.7;

    /// <summary>The spread of that bias between pupils.</summary>
    public double BiasSdLogits { get; init; } = 0.5;

    /// <summary>What one prediction wobbles by.</summary>
    public double PredictionSdLogits { get; init; } = 0.4;

    /// <summary>How much of a prediction comes from the last set at that level instead of self-image, 0 to 1.</summary>
    public double FromExperienceFraction { get; init; } = 0.3;

    /// <summary>The success share pupils look for, on average.</summary>
    public double TasteFraction { get; init; } = 0.7;

    /// <summary>The spread of that taste; a drawn taste is kept within 0.2 and 0.95.</summary>
    public double TasteSdFraction { get; init; } = 0.13;

    /// <summary>How often a pupil takes the level that suits the taste best, or the last one in a later lesson, instead of one near it.</summary>
    public double SteadinessFraction { get; init; } = 0.6;

    /// <summary>How often a cue that was not met stays unticked, on average; a pupil's own lies within 0.15 of it.</summary>
    public double HonestyFraction { get; init; } = 0.8;

    /// <summary>How often a cue that was met stays unticked.</summary>
    public double OverlookedCueFraction { get; init; } = 0.05;

    /// <summary>How often pupils decide for another level after a set.</summary>
    /// <remarks>About 45 % changed for the third set. Source: [ByraJenkins1997].</remarks>
    public double ChangeFraction { get; init; } = 0.45;
}
