namespace Slantwise.Engines.Planning.Space;

/// <summary>A mat in the hall.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="IsTurned">Whether its long side goes from front to back instead of left to right.</param>
public readonly record struct PlacedMat(FloorPoint Centre, bool IsTurned)
{
    /// <summary>The floor it covers.</summary>
    /// <param name="need">What it measures.</param>
    public FloorRectangle Covers(MatNeed need)
    {
        var (width, depth) = IsTurned ? (need.WidthM, need.LengthM) : (need.LengthM, need.WidthM);
        return new(Centre.XM - width / 2, Centre.YM - depth / 2, width, depth);
    }
}
