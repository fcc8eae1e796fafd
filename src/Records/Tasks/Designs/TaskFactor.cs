namespace Slantwise.Records.Tasks.Designs;

/// <summary>One row of a task's factor grid: what can be changed to make it easier or harder, and how far.</summary>
/// <remarks>A factor whose key is a dose's word (<c>holdS</c>) takes its value at a level from the level's dose, so that it is written once.</remarks>
public sealed record TaskFactor
{
    /// <summary>Its key in camel case, once a task; a dose's word where the dose is the factor.</summary>
    public required string Key { get; init; }

    /// <summary>Whether it changes the movement or how much of it there is.</summary>
    public required FactorKind Kind { get; init; }

    /// <summary>Whether it is the one that is meant to matter most.</summary>
    public required FactorRole Role { get; init; }

    /// <summary>The unit of numbers; none for words and for doses, whose key names their unit.</summary>
    public FactorUnit? Unit { get; init; }

    /// <summary>Its values from the easy to the hard end, all numbers or all words. May reach further than the suggested levels do.</summary>
    public IReadOnlyList<FactorValue> Range { get; init; } = [];

    /// <summary>The dose it is; none for any other factor.</summary>
    public DoseKind? Dose => Files.TaskFileWords.Doses.TryGetValue(Key, out var kind) ? kind : null;
}
