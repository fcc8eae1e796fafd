namespace Slantwise.Records.Safety;

/// <summary>What a teacher wrote on a lesson's risk page.</summary>
public sealed record RiskNotes
{
    /// <summary>Tasks with words of the teacher's own.</summary>
    public IReadOnlyList<TaskRisk> Tasks { get; init; } = [];

    /// <summary>What to look at before the lesson beyond what is proposed, at most 12 of 160 characters.</summary>
    public IReadOnlyList<string> EquipmentChecks { get; init; } = [];

    /// <summary>Anything else, 0 to 1000 characters.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Whether first names of pupils with restrictions are on the page; never why.</summary>
    public bool ShowsNames { get; init; }
}
