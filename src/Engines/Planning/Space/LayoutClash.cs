namespace Slantwise.Engines.Planning.Space;

/// <summary>Two things too near to each other.</summary>
/// <param name="Kind">What comes too near to what.</param>
/// <param name="Mat">The mat, as a place in the list; the one whose circle it is.</param>
/// <param name="Other">The other mat or the obstacle, as a place in its list; a wall: 0 left, 1 right, 2 front, 3 back.</param>
/// <param name="MissingM">By how much the distance is too small, above 0.</param>
public readonly record struct LayoutClash(ClashKind Kind, int Mat, int Other, double MissingM);
