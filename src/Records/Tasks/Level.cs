using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks;

/// <summary>One way into a task: how it is done, and how much of it.</summary>
public sealed record Level
{
    /// <summary>The level's id, never used for another level even when the wording changes.</summary>
    public required Guid Id { get; init; }

    /// <summary>How it is done at this level, in pupil words, 1 to 80 characters ("arms out, eyes open").</summary>
    public required string Name { get; init; }

    /// <summary>How much makes a success.</summary>
    public required Dose Dose { get; init; }

    /// <summary>What it asks of the body that a policy or a restriction may rule out.</summary>
    public IReadOnlyList<BodyDemand> Demands { get; init; } = [];

    /// <summary>The library's posture that shows it, by its key; none for a movement or a level without a picture.</summary>
    public string? Posture { get; init; }
}
