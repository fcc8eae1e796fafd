namespace Slantwise.Engines.Planning.Groups;

/// <summary>Pupils who stay together, as one thing to place.</summary>
/// <param name="Pupils">Who they are.</param>
/// <param name="Supporters">How many of them may support.</param>
/// <param name="Fixed">Their fixed group; none where they have none.</param>
/// <param name="Apart">The blocks they may not share a group with.</param>
internal sealed record GroupBlock(int[] Pupils, int Supporters, int? Fixed, int[] Apart);
