namespace Slantwise.Records.Safety;

/// <summary>A task's line on the risk page, where the teacher said something else than what is proposed.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Level">How much care it asks for; none for what is proposed.</param>
/// <param name="Controls">What is done about it, in the teacher's words, at most 8 of 160 characters; empty for what is proposed.</param>
public sealed record TaskRisk(Guid TaskId, RiskLevel? Level, IReadOnlyList<string> Controls);
