namespace Slantwise.Engines.Planning.Space;

/// <summary>Something in the hall that nobody may fall on.</summary>
/// <param name="Place">Where it stands; it may reach beyond the walls.</param>
/// <param name="IsHigh">Whether nobody can see over it.</param>
public readonly record struct HallObstacle(FloorRectangle Place, bool IsHigh);
