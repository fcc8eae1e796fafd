using Slantwise.Records.Postures;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Designs;

/// <summary>A suggested level without its words: where it stands on the factors, and what it asks.</summary>
public sealed record DesignedLevel
{
    /// <summary>The level's id, the same in every language.</summary>
    public required Guid Id { get; init; }

    /// <summary>How much makes a success.</summary>
    public required Dose Dose { get; init; }

    /// <summary>Where it stands on the grid: a value by factor key, doses left out.</summary>
    public IReadOnlyDictionary<string, FactorValue> Settings { get; init; } = new Dictionary<string, FactorValue>();

    /// <summary>What it asks of the body that a policy or a restriction may rule out.</summary>
    public IReadOnlyList<BodyDemand> Demands { get; init; } = [];

    /// <summary>The library's posture that shows it; none for a movement.</summary>
    public string? Posture { get; init; }

    /// <summary>What the author wrote and what the posture shows, each once, in the order of <see cref="BodyDemand"/>.</summary>
    public IReadOnlyList<BodyDemand> Needs => PostureDemands.Of(Named(""));

    /// <summary>Its value of a factor, from the dose where the factor is one.</summary>
    /// <param name="factor">A factor of the task's grid.</param>
    /// <returns>None where the level does not stand on that factor.</returns>
    public FactorValue? ValueOf(TaskFactor factor) => factor.Dose is { } kind
        ? Dose.Kind == kind ? FactorValue.Of(Dose.Amount) : null
        : Settings.TryGetValue(factor.Key, out var value) ? value : null;

    /// <summary>The level with a name, as a sheet takes it.</summary>
    /// <param name="name">Its name in the pupils' language.</param>
    public Level Named(string name) => new() { Id = Id, Name = name, Dose = Dose, Demands = Demands, Posture = Posture };
}
