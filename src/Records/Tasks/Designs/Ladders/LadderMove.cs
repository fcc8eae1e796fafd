namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>A factor that moves from a level to another.</summary>
/// <param name="FactorKey">The factor.</param>
/// <param name="By">By how many places of its range: more than 0 towards its hard end, less than 0 where it eases. Never 0.</param>
public readonly record struct LadderMove(string FactorKey, int By);
