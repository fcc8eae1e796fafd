using Slantwise.Records.Schools;

namespace Slantwise.Records.Tasks.Designs;

/// <summary>A movement task with everything a teacher plans it by: the facts once, the words in every language there is.</summary>
public sealed record TaskDesign
{
    /// <summary>The task's id, the same in every language.</summary>
    public required Guid Id { get; init; }

    /// <summary>The family its movement belongs to.</summary>
    public required MovementPattern Pattern { get; init; }

    /// <summary>What carries, at the level that shows the task most plainly.</summary>
    public IReadOnlyList<SupportPart> Supports { get; init; } = [];

    /// <summary>The mats it takes.</summary>
    public required MatNeed Mats { get; init; }

    /// <summary>The floor that has to stay free.</summary>
    public required ClearSpace Space { get; init; }

    /// <summary>The tasks that are better learned before it, by id.</summary>
    public IReadOnlyList<Guid> Prerequisites { get; init; } = [];

    /// <summary>The factor grid.</summary>
    public IReadOnlyList<TaskFactor> Factors { get; init; } = [];

    /// <summary>The suggested levels, from easier to harder as the author expects it. The order is a hypothesis.</summary>
    public IReadOnlyList<DesignedLevel> Levels { get; init; } = [];

    /// <summary>The words, by language of two letters.</summary>
    public IReadOnlyDictionary<string, TaskWords> Words { get; init; } = new Dictionary<string, TaskWords>();

    /// <summary>What a success can be measured by: the doses of the grid.</summary>
    public IReadOnlyList<DoseKind> DoseKinds => [.. Factors.Select(f => f.Dose).OfType<DoseKind>()];

    /// <summary>Everything any of its levels asks, each once, in the order of <see cref="BodyDemand"/>.</summary>
    public IReadOnlyList<BodyDemand> Needs => [.. Levels.SelectMany(l => l.Needs).Distinct().Order()];

    /// <summary>The factors that differ between two levels: what a pupil changes who goes from one to the other.</summary>
    /// <param name="one">A level of the task.</param>
    /// <param name="other">Another.</param>
    /// <returns>In the order of the grid; empty if none moves.</returns>
    public IReadOnlyList<TaskFactor> Moved(DesignedLevel one, DesignedLevel other) => [.. Factors.Where(f => one.ValueOf(f) != other.ValueOf(f))];

    /// <summary>Whether the grid has a dose: its kind as a row, its amount in the row's range.</summary>
    /// <param name="dose">Any dose.</param>
    public bool HasDose(Dose dose) => Factors.Any(f => f.Dose == dose.Kind && f.Range.Contains(FactorValue.Of(dose.Amount)));

    /// <summary>Whether a level has a place on every row of the grid that is no dose, and its dose on one that is.</summary>
    /// <param name="level">A level of the task.</param>
    /// <returns>False for a level that was added by hand, or where a value was taken off the grid.</returns>
    public bool IsOnGrid(DesignedLevel level) => Factors.Count > 0 && HasDose(level.Dose)
        && Factors.All(f => f.Dose is not null || (level.ValueOf(f) is { } at && f.Range.Contains(at)));

    /// <summary>The task in one language, as a school keeps it and a sheet takes it.</summary>
    /// <param name="language">Two letters; English, then any, where the design does not have it.</param>
    /// <param name="schoolId">The school that will own it.</param>
    /// <exception cref="InvalidOperationException">The design has no words at all.</exception>
    public MovementTask ToTask(string language, Guid schoolId)
    {
        var words = Words.GetValueOrDefault(language) ?? Words.GetValueOrDefault("en") ?? Words.Values.FirstOrDefault()
            ?? throw new InvalidOperationException("A task needs words in at least one language.");
        return new MovementTask
        {
            SchoolId = schoolId,
            Id = Id,
            Name = words.Name,
            Purpose = words.Purpose,
            Cues = words.Cues,
            Caution = words.Caution,
            Levels = [.. Levels.Zip(words.Levels, (level, name) => level.Named(name))],
        };
    }
}
