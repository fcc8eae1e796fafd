namespace Slantwise.Records.Floor.Contracts;

/// <summary>Why a request was not done, as problem details. Source: [RFC9457].</summary>
/// <param name="Status">The HTTP status.</param>
/// <param name="Title">A sentence for whoever reads it, in the language asked for.</param>
/// <param name="Code">Which problem it is, for the program: one of those in docs/sync.md.</param>
/// <param name="State">How lesson and device stand, where the device is known; else none.</param>
public sealed record FloorProblem(int Status, string Title, string Code, FloorState? State = null);
