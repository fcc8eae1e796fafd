namespace Slantwise.Records.Safety;

/// <summary>A task as a risk page shows it: what is proposed, and what the teacher says instead.</summary>
public sealed record RiskTask
{
    /// <summary>The task.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>Its place on the sheet, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its usual caution; empty where there is none. Always on the page.</summary>
    public string Caution { get; init; } = "";

    /// <summary>What asks for more than the usual care.</summary>
    public IReadOnlyList<RiskReason> Reasons { get; init; } = [];

    /// <summary>Why the level is proposed, one sentence.</summary>
    public required string Because { get; init; }

    /// <summary>The level the working rule proposes; none where nothing of the task is offered.</summary>
    public RiskLevel? ProposedLevel { get; init; }

    /// <summary>The teacher's own level; none where the proposal stands.</summary>
    public RiskLevel? OwnLevel { get; init; }

    /// <summary>The level on the page: the teacher's, or the proposal.</summary>
    public RiskLevel? Level => OwnLevel ?? ProposedLevel;

    /// <summary>What is proposed to be done about it, at most 8, the most needed first.</summary>
    public IReadOnlyList<string> ProposedControls { get; init; } = [];

    /// <summary>What the teacher does about it; empty where the proposals stand.</summary>
    public IReadOnlyList<string> OwnControls { get; init; } = [];

    /// <summary>What is on the page: the teacher's, or the proposals.</summary>
    public IReadOnlyList<string> Controls => OwnControls.Count > 0 ? OwnControls : ProposedControls;

    /// <summary>What the school's policy asks for, which no lesson changes: conditions, the longest hold on the head, who may secure whom.</summary>
    public IReadOnlyList<string> PolicyLines { get; init; } = [];

    /// <summary>Questions to the teacher that a rule cannot answer.</summary>
    public IReadOnlyList<string> Questions { get; init; } = [];

    /// <summary>What was noted with the same task up to this lesson's day, the latest first, at most 3.</summary>
    public IReadOnlyList<Incident> Earlier { get; init; } = [];
}
