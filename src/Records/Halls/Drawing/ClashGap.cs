using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>Where two things come too near: the shortest line between them.</summary>
internal static class ClashGap
{
    /// <summary>Its ends; none for falling circles, and where the two overlap.</summary>
    public static (FloorPoint From, FloorPoint To)? Of(LayoutClash clash, SchoolHall hall, MatNeed need, IReadOnlyList<PlacedMat> mats)
    {
        var mat = mats[clash.Mat].Covers(need);
        FloorRectangle? other = clash.Kind switch
        {
            ClashKind.MatAndMat => mats[clash.Other].Covers(need),
            ClashKind.MatAndObstacle => hall.OnFloor().Obstacles[clash.Other].Place,
            // A wall is a thin thing along the hall.
            ClashKind.MatAndWall => clash.Other switch
            {
                0 => new(-1, 0, 1, hall.DepthM),
                1 => new(hall.WidthM, 0, 1, hall.DepthM),
                2 => new(0, -1, hall.WidthM, 1),
                _ => new(0, hall.DepthM, hall.WidthM, 1),
            },
            _ => null,
        };
        if (other is not { } near) return null;
        var (fromX, toX) = Nearest(mat.LeftXM, mat.RightXM, near.LeftXM, near.RightXM);
        var (fromY, toY) = Nearest(mat.FrontYM, mat.BackYM, near.FrontYM, near.BackYM);
        return fromX == toX && fromY == toY ? null : (new(fromX, fromY), new(toX, toY));
    }

    // Where two runs on a line come nearest: their ends, or the middle of what they share.
    private static (double FromM, double ToM) Nearest(double low, double high, double otherLow, double otherHigh)
    {
        if (otherLow >= high) return (high, otherLow);
        if (otherHigh <= low) return (low, otherHigh);
        var middle = (Math.Max(low, otherLow) + Math.Min(high, otherHigh)) / 2;
        return (middle, middle);
    }
}
