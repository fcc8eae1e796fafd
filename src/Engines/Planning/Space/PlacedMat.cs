namespace Slantwise.Engines.Planning.Space;

/// <summary>A mat in the hall.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="IsTurned">Whether its long side goes from front to back instead of left to right.</param>
/// <param name="FallM">The radius of the falling circle around its middle, 0 to 10, from what is done on it; 0 where nobody falls. See <see cref="FallingCircle"/>.</param>
public readonly record struct PlacedMat(FloorPoint Centre, bool IsTurned, double FallM)
{
    /// <summary>The floor it covers.</summary>
    /// <param name="need">What it measures.</param>
    public FloorRectangle Covers(MatNeed need)
    {
        var (width, depth) = IsTurned ? (need.WidthM, need.LengthM) : (need.LengthM, need.WidthM);
        return new(Centre.XM - width / 2, Centre.YM - depth / 2, width, depth);
    }
}
