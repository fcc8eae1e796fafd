using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>The shapes of one mat; all of them move with it.</summary>
/// <param name="Zone">The floor that stays clear around it, under all mats.</param>
/// <param name="Body">The mat, its falling circle and its number.</param>
/// <param name="Signs">Its signs, over all mats.</param>
public sealed record MatShapes(IReadOnlyList<Shape> Zone, IReadOnlyList<Shape> Body, IReadOnlyList<Shape> Signs);
