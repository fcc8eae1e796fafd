using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>The floor behind a high thing, which somebody who stands at a place does not see.</summary>
public static class SightShadow
{
    private const double FarM = 1000;

    /// <summary>The floor that is hidden, thing and all.</summary>
    /// <param name="place">Where somebody stands.</param>
    /// <param name="thing">The high thing.</param>
    /// <param name="widthM">The hall, from left to right.</param>
    /// <param name="depthM">The hall, from front to back.</param>
    /// <returns>A convex piece of the hall's floor, its corners in order; empty where the place lies in the thing or nothing of it in the hall.</returns>
    public static IReadOnlyList<FloorPoint> Of(FloorPoint place, FloorRectangle thing, double widthM, double depthM)
    {
        if (place.XM >= thing.LeftXM && place.XM <= thing.RightXM && place.YM >= thing.FrontYM && place.YM <= thing.BackYM) return [];
        FloorPoint[] corners = [new(thing.LeftXM, thing.FrontYM), new(thing.RightXM, thing.FrontYM), new(thing.RightXM, thing.BackYM), new(thing.LeftXM, thing.BackYM)];
        // Each corner and where its line of sight goes on to: the hull of all is the shadow with the thing in it.
        var points = corners.SelectMany(c => new[] { c, Beyond(place, c) }).ToList();
        return Within(Hull(points), widthM, depthM);
    }

    private static FloorPoint Beyond(FloorPoint place, FloorPoint corner)
    {
        var (x, y) = (corner.XM - place.XM, corner.YM - place.YM);
        var far = FarM / Math.Sqrt(x * x + y * y);
        return new(corner.XM + far * x, corner.YM + far * y);
    }

    // Source: [Andrew1979].
    private static List<FloorPoint> Hull(List<FloorPoint> points)
    {
        List<FloorPoint> sorted = [.. points.OrderBy(p => p.XM).ThenBy(p => p.YM)];
        List<FloorPoint> Chain(IEnumerable<FloorPoint> way)
        {
            var chain = new List<FloorPoint>();
            foreach (var p in way)
            {
                while (chain.Count >= 2 && Cross(chain[^2], chain[^1], p) <= 0) chain.RemoveAt(chain.Count - 1);
                chain.Add(p);
            }
            chain.RemoveAt(chain.Count - 1);
            return chain;
        }
        return [.. Chain(sorted), .. Chain(sorted.AsEnumerable().Reverse())];
    }

    private static double Cross(FloorPoint a, FloorPoint b, FloorPoint c) => (b.XM - a.XM) * (c.YM - a.YM) - (b.YM - a.YM) * (c.XM - a.XM);

    // Cut off at each wall in turn.
    private static IReadOnlyList<FloorPoint> Within(List<FloorPoint> piece, double widthM, double depthM)
    {
        foreach (var inside in new Func<FloorPoint, double>[] { p => p.XM, p => widthM - p.XM, p => p.YM, p => depthM - p.YM })
        {
            var kept = new List<FloorPoint>();
            for (var i = 0; i < piece.Count; i++)
            {
                var (a, b) = (piece[i], piece[(i + 1) % piece.Count]);
                var (da, db) = (inside(a), inside(b));
                if (da >= 0) kept.Add(a);
                if (da >= 0 != db >= 0) kept.Add(new(a.XM + da / (da - db) * (b.XM - a.XM), a.YM + da / (da - db) * (b.YM - a.YM)));
            }
            piece = kept;
        }
        return piece.Count < 3 ? [] : piece;
    }
}
