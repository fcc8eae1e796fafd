using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>What a teacher said about a proposed level before taking it.</summary>
/// <param name="Name">What it is called; none while the proposed name stands.</param>
/// <param name="Posture">The posture that shows it; empty for none, nothing while the proposed one stands.</param>
/// <param name="Demands">What it asks of the body; none while nothing was said.</param>
public sealed record LevelAnswer(string? Name = null, string? Posture = null, IReadOnlyList<BodyDemand>? Demands = null);
