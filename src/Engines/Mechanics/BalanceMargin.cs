namespace Slantwise.Engines.Mechanics;

/// <summary>How safely the line of gravity falls inside the base, and over which side it would leave.</summary>
/// <param name="MarginH">Distance to the nearest side in statures; less than 0 outside, 0 for a base that is a point or a line and is met.</param>
/// <param name="Edges">Every side of the base in its order, with a wall those of the base carried on behind it; empty for a point, one for a line.</param>
/// <param name="WeakestEdge">Index into <paramref name="Edges"/> of the side it would tip over first; −1 where there is none.</param>
public sealed record BalanceMargin(double MarginH, IReadOnlyList<TippingEdge> Edges, int WeakestEdge)
{
    // Farther than any body reaches.
    private const double FarH = 3;

    /// <summary>Whether the body can be held still: the line of gravity falls on the base.</summary>
    public bool IsHeld => MarginH >= 0;

    /// <summary>Whether the body would still be held with its centre over another point: on the base, or past it only on the wall's side.</summary>
    /// <param name="point">On the floor.</param>
    /// <returns>Never for a base that is a point or a line: nothing can be held over them against the smallest error.</returns>
    public bool Holds(Point2 point)
    {
        if (Edges.Count < 3) return false;
        foreach (var edge in Edges)
            if (!edge.IsPropped && Point2.Turn(edge.From, edge.To, point) < 0) return false;
        return true;
    }

    /// <summary>The margin of a centre of mass over a base.</summary>
    /// <param name="centre">The centre of mass, on the floor's frame; its height is more than 0.</param>
    /// <param name="baseOfSupport">The base.</param>
    /// <param name="towardsWall">Which way a wall props the body, a vector of length 1: the base then goes on towards it,
    /// and the sides behind the wall are not tipped over. None without a wall.</param>
    /// <returns>Angles and energies as for a rigid body on a rigid floor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A centre of mass that is not above the floor.</exception>
    /// <remarks>Tipping angle atan(b/h) and energy √(h²+b²) − h by statics. Source: [Knight2017] ch. 12.</remarks>
    public static BalanceMargin Of(Point3 centre, BaseOfSupport baseOfSupport, Point2? towardsWall = null)
    {
        if (!(centre.ZH > 0)) throw new ArgumentOutOfRangeException(nameof(centre), centre.ZH, "A centre of mass is above the floor.");
        var corners = (towardsWall is { } wall ? Extended(baseOfSupport, wall) : baseOfSupport).Corners;
        if (corners.Count < 3) return OfLine(centre, corners);

        var edges = new TippingEdge[corners.Count];
        var weakest = -1;
        for (var i = 0; i < edges.Length; i++)
        {
            edges[i] = Edge(centre, corners[i], corners[(i + 1) % corners.Count]);
            if (towardsWall is { } towards) edges[i] = edges[i] with { IsPropped = Faces(edges[i], towards) };
            if (edges[i].IsPropped) continue;
            if (weakest < 0 || edges[i].MarginH < edges[weakest].MarginH) weakest = i;
        }
        // Outside, the distance to a side's line understates the distance to the base beyond that side's ends.
        var marginH = edges[weakest].MarginH < 0 ? -NearestH(centre.OnFloor, edges) : edges[weakest].MarginH;
        return new BalanceMargin(marginH, edges, weakest);
    }

    // A wall carries whatever leans on it, so the base goes on towards it without an end; what closes it far behind the wall is propped.
    private static BaseOfSupport Extended(BaseOfSupport baseOfSupport, Point2 towardsWall)
    {
        var corners = baseOfSupport.Corners;
        Span<Point2> both = new Point2[2 * corners.Count];
        for (var i = 0; i < corners.Count; i++) (both[i], both[corners.Count + i]) = (corners[i], corners[i] + FarH * towardsWall);
        return BaseOfSupport.Of(both);
    }

    private static bool Faces(TippingEdge edge, Point2 wall) => edge.Outwards.XH * wall.XH + edge.Outwards.YH * wall.YH > 1e-6;

    private static BalanceMargin OfLine(Point3 centre, IReadOnlyList<Point2> corners)
    {
        if (corners.Count == 1) return new BalanceMargin(-(centre.OnFloor - corners[0]).LengthH, [], -1);
        var edge = Edge(centre, corners[0], corners[1]);
        return new BalanceMargin(-DistanceH(centre.OnFloor, edge), [edge], 0);
    }

    private static TippingEdge Edge(Point3 centre, Point2 from, Point2 to)
    {
        var marginH = Point2.Turn(from, to, centre.OnFloor) / (to - from).LengthH;
        var energyH = marginH > 0 ? Math.Sqrt(centre.ZH * centre.ZH + marginH * marginH) - centre.ZH : 0;
        return new TippingEdge(from, to, marginH, Math.Atan2(marginH, centre.ZH), energyH);
    }

    private static double NearestH(Point2 point, TippingEdge[] edges)
    {
        var nearestH = double.PositiveInfinity;
        foreach (var edge in edges) nearestH = Math.Min(nearestH, DistanceH(point, edge));
        return nearestH;
    }

    private static double DistanceH(Point2 point, TippingEdge edge)
    {
        var (along, to) = (edge.To - edge.From, point - edge.From);
        var atFraction = Math.Clamp((along.XH * to.XH + along.YH * to.YH) / (along.LengthH * along.LengthH), 0, 1);
        return (to - atFraction * along).LengthH;
    }
}
