namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>A level that the grid suggests.</summary>
/// <param name="Level">Where it stands, its dose, and its posture and demands as far as they are known. A level of the task that stands there keeps its id; the id of another is made from what it is.</param>
/// <param name="Moves">What moves from the one before; empty for the first.</param>
/// <param name="Basis">What its demands rest on. Where they are unknown, an empty list does not mean that it asks nothing.</param>
/// <param name="IsKept">Whether the task has it already.</param>
public sealed record ProposedLevel(DesignedLevel Level, IReadOnlyList<LadderMove> Moves, DemandBasis Basis, bool IsKept);
