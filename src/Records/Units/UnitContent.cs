namespace Slantwise.Records.Units;

/// <summary>What a unit is made of.</summary>
public sealed record UnitContent
{
    /// <summary>What pupils should be able to show, at most 60.</summary>
    public IReadOnlyList<Outcome> Outcomes { get; init; } = [];

    /// <summary>The lessons in order, at most 40.</summary>
    public IReadOnlyList<PlannedUnitLesson> Lessons { get; init; } = [];

    /// <summary>The teacher's notes, 0 to 2000 characters.</summary>
    public string Notes { get; init; } = "";
}
