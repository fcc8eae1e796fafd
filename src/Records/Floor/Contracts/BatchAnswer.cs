namespace Slantwise.Records.Floor.Contracts;

/// <summary>What became of a batch, sent once what was taken is durable.</summary>
/// <param name="TakenIds">The entries that are kept now, those that were here before included: the device may forget them.</param>
/// <param name="Refused">Those that cannot be taken and why: the device keeps them aside and says so.</param>
/// <param name="State">How the lesson and the device stand.</param>
public sealed record BatchAnswer(IReadOnlyList<Guid> TakenIds, IReadOnlyList<RefusedEntry> Refused, FloorState State);
