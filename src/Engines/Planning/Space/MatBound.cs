namespace Slantwise.Engines.Planning.Space;

/// <summary>How many mats can at most lie in a hall, by area alone: no layout has more, and usually fewer fit.</summary>
public static class MatBound
{
    /// <summary>The bound.</summary>
    /// <param name="hall">Within the ranges of its properties.</param>
    /// <param name="need">Within the ranges of its properties.</param>
    /// <param name="leastFallM">The smallest falling circle of any mat, 0 to 10.</param>
    /// <returns>0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hall or the mat's need outside its range; a circle not of 0 to 10 m.</exception>
    /// <remarks>
    /// Mats widened by half of the clear distance, corners round, do not overlap. They lie in the hall less what is clear along the walls beyond that half. The
    /// floor that obstacles take from them is taken off where mats keep at least that half from obstacles. If circles are kept apart, they do not overlap either and lie between the walls.
    /// </remarks>
    public static int Of(Hall hall, MatNeed need, double leastFallM)
    {
        hall.Check();
        need.Check();
        if (!(leastFallM is >= 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(leastFallM), leastFallM, "A falling circle has a radius of 0 to 10 metres.");
        var half = need.ClearM / 2;
        var inset = need.WallClearM - half;
        var room = Room(hall, inset);
        var floorM2 = room is null ? 0 : room.Value.AreaM2 - (need.WallClearM >= half ? Covered(hall, room.Value) : 0);
        var matM2 = need.LengthM * need.WidthM + 2 * half * (need.LengthM + need.WidthM) + Math.PI * half * half;
        var most = Whole(floorM2 / matM2);
        if (Room(hall, Math.Max(need.WallClearM + need.WidthM / 2, leastFallM)) is null) return 0;
        if (!need.AreCirclesApart || leastFallM <= 0) return most;
        var all = new FloorRectangle(0, 0, hall.WidthXM, hall.DepthYM);
        return Math.Min(most, Whole((all.AreaM2 - Covered(hall, all)) / (Math.PI * leastFallM * leastFallM)));
    }

    private static int Whole(double share) => (int)Math.Floor(share + 1e-9);

    // A hall of no width still has a line on which middles may lie.
    private static FloorRectangle? Room(Hall hall, double insetM) => hall.WidthXM - 2 * insetM >= -1e-9 && hall.DepthYM - 2 * insetM >= -1e-9
        ? new(insetM, insetM, Math.Max(0, hall.WidthXM - 2 * insetM), Math.Max(0, hall.DepthYM - 2 * insetM)) : null;

    // The floor under obstacles, each piece once, by the grid that their sides make.
    private static double Covered(Hall hall, FloorRectangle room)
    {
        var places = hall.Obstacles.Select(o => o.Place).ToList();
        double[] Cuts(IEnumerable<double> ends, double low, double high) => [.. ends.Select(e => Math.Clamp(e, low, high)).Append(low).Append(high).Distinct().Order()];
        var xs = Cuts(places.SelectMany(p => new[] { p.LeftXM, p.RightXM }), room.LeftXM, room.RightXM);
        var ys = Cuts(places.SelectMany(p => new[] { p.FrontYM, p.BackYM }), room.FrontYM, room.BackYM);
        double covered = 0;
        for (var i = 0; i + 1 < xs.Length; i++)
        {
            for (var j = 0; j + 1 < ys.Length; j++)
            {
                var (x, y) = ((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2);
                if (places.Any(p => x > p.LeftXM && x < p.RightXM && y > p.FrontYM && y < p.BackYM)) covered += (xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]);
            }
        }
        return covered;
    }
}
