using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls;

/// <summary>A hall and what lies in it, as the engine of space takes them.</summary>
public static class HallFloor
{
    /// <summary>The hall as the engine takes it.</summary>
    /// <param name="hall">The hall.</param>
    public static Hall OnFloor(this SchoolHall hall) =>
        new(hall.WidthM, hall.DepthM, [.. hall.Things.Select(t => new HallObstacle(new(t.LeftM, t.FrontM, t.WidthM, t.DepthM), t.IsHigh))]);

    /// <summary>What every mat measures and needs.</summary>
    /// <param name="layout">The layout.</param>
    public static MatNeed Need(this HallLayout layout) => new(layout.MatLengthM, layout.MatWidthM, layout.ClearM, layout.WallClearM, layout.AreCirclesApart);

    /// <summary>The mats where they lie, in their order.</summary>
    /// <param name="layout">The layout.</param>
    public static IReadOnlyList<PlacedMat> Placed(this HallLayout layout) => [.. layout.Mats.Select(m => new PlacedMat(new(m.XM, m.YM), m.IsTurned, m.FallM))];

    /// <summary>Where the teacher stands; none where nobody said.</summary>
    /// <param name="layout">The layout.</param>
    public static FloorPoint? Teacher(this HallLayout layout) => layout is { TeacherXM: { } x, TeacherYM: { } y } ? new(x, y) : null;
}
