namespace Slantwise.Records.Tasks.Designs;

/// <summary>Everything about a task that is words, in one language.</summary>
public sealed record TaskWords
{
    /// <summary>The language, two letters.</summary>
    public required string Language { get; init; }

    /// <summary>The task's name.</summary>
    public required string Name { get; init; }

    /// <summary>What the pupil sets out to do, one sentence in pupil words.</summary>
    public required string Purpose { get; init; }

    /// <summary>What to feel, or what a partner can see, 3 to 5; the same for every level.</summary>
    public IReadOnlyList<string> Cues { get; init; } = [];

    /// <summary>The usual caution; empty where there is none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The levels' names, in the order of the design's levels.</summary>
    public IReadOnlyList<string> Levels { get; init; } = [];

    /// <summary>The names of factors and of their word values, by factor key. A dose's name comes with the program.</summary>
    public IReadOnlyDictionary<string, FactorWords> Factors { get; init; } = new Dictionary<string, FactorWords>();

    /// <summary>What often goes another way.</summary>
    public IReadOnlyList<MovementError> Errors { get; init; } = [];

    /// <summary>Ways to make it fit, in the order of <see cref="StepLetter"/>.</summary>
    public IReadOnlyList<Adaptation> Adaptations { get; init; } = [];
}
