namespace Slantwise.Engines.Planning.Blocks;

/// <summary>How much of a lesson goes to a category.</summary>
/// <param name="Category">The category.</param>
/// <param name="TimeS">Its time.</param>
/// <param name="ShareFraction">Its share of all blocks, 0 to 1.</param>
/// <param name="OverrunFraction">Its share of the lesson if talk overruns and activity is what is cut at the end.</param>
/// <param name="Orientation">The published value it was held against; none where none was given.</param>
/// <param name="IsOutside">Whether the planned share lies outside of it.</param>
public readonly record struct CategoryShare(
    TimeCategory Category, double TimeS, double ShareFraction, double OverrunFraction, OrientationValue? Orientation, bool IsOutside);
