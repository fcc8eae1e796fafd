namespace Slantwise.Records.Halls;

/// <summary>The floor of a hall that nothing stands on.</summary>
public static class FreeFloor
{
    /// <summary>Its area; where two things overlap, the floor under them is taken off once.</summary>
    /// <param name="hall">The hall.</param>
    /// <returns>0 or more, in square metres.</returns>
    public static double OfM2(SchoolHall hall)
    {
        double[] Cuts(IEnumerable<double> ends, double high) => [.. ends.Select(e => Math.Clamp(e, 0, high)).Append(0).Append(high).Distinct().Order()];
        var xs = Cuts(hall.Things.SelectMany(t => new[] { t.LeftM, t.LeftM + t.WidthM }), hall.WidthM);
        var ys = Cuts(hall.Things.SelectMany(t => new[] { t.FrontM, t.FrontM + t.DepthM }), hall.DepthM);
        double free = 0;
        for (var i = 0; i + 1 < xs.Length; i++)
        {
            for (var j = 0; j + 1 < ys.Length; j++)
            {
                var (x, y) = ((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2);
                if (!hall.Things.Any(t => x > t.LeftM && x < t.LeftM + t.WidthM && y > t.FrontM && y < t.FrontM + t.DepthM)) free += (xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]);
            }
        }
        return free;
    }
}
