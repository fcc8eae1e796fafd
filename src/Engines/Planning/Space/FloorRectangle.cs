namespace Slantwise.Engines.Planning.Space;

/// <summary>A rectangle on the floor of the hall, sides along the walls; x from the left wall, y from the front wall.</summary>
/// <param name="LeftXM">Its side nearest to the left wall.</param>
/// <param name="FrontYM">Its side nearest to the front wall.</param>
/// <param name="WidthXM">Along x, above 0.</param>
/// <param name="DepthYM">Along y, above 0.</param>
public readonly record struct FloorRectangle(double LeftXM, double FrontYM, double WidthXM, double DepthYM)
{
    /// <summary>Its far side.</summary>
    public double RightXM => LeftXM + WidthXM;

    /// <summary>Its far side.</summary>
    public double BackYM => FrontYM + DepthYM;

    /// <summary>Its middle.</summary>
    public FloorPoint Centre => new(LeftXM + WidthXM / 2, FrontYM + DepthYM / 2);

    /// <summary>Its area.</summary>
    internal double AreaM2 => WidthXM * DepthYM;

    /// <summary>The gap to another one, 0 where they touch; where they overlap, less than 0 by the least move that would part them.</summary>
    internal double GapM(FloorRectangle other)
    {
        var x = Math.Max(other.LeftXM - RightXM, LeftXM - other.RightXM);
        var y = Math.Max(other.FrontYM - BackYM, FrontYM - other.BackYM);
        return x > 0 && y > 0 ? Math.Sqrt(x * x + y * y) : Math.Max(x, y);
    }

    /// <summary>The gap from a point, 0 inside.</summary>
    internal double GapM(FloorPoint point)
    {
        var x = Math.Max(0, Math.Max(LeftXM - point.XM, point.XM - RightXM));
        var y = Math.Max(0, Math.Max(FrontYM - point.YM, point.YM - BackYM));
        return Math.Sqrt(x * x + y * y);
    }

    /// <summary>Whether the straight line between two points goes through the inside; along a side it does not.</summary>
    /// <remarks>Source: [LiangBarsky1984].</remarks>
    internal bool Hides(FloorPoint from, FloorPoint to)
    {
        double enter = 0, leave = 1;
        foreach (var (start, way, low, high) in new[] { (from.XM, to.XM - from.XM, LeftXM, RightXM), (from.YM, to.YM - from.YM, FrontYM, BackYM) })
        {
            if (way == 0)
            {
                if (start <= low || start >= high) return false;
                continue;
            }
            var (a, b) = ((low - start) / way, (high - start) / way);
            enter = Math.Max(enter, Math.Min(a, b));
            leave = Math.Min(leave, Math.Max(a, b));
        }
        return leave - enter > 1e-9;
    }
}
