namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>What two bodies that both stand on the floor ask of each other through their hands.</summary>
/// <param name="LeastFraction">The smallest pull that holds both, a share of one body's weight; less than 0 for a push against each other.</param>
/// <param name="MostFraction">The largest one that still holds both.</param>
/// <param name="HeightH">How high they hold each other, in statures.</param>
/// <remarks>
/// A level pull p at height h moves the point that the floor has to carry by p·h towards the partner; each body holds for the pulls that
/// keep that point on its own base, and the pair for the pulls that hold both: statics, with the pull along the line between the bases.
/// </remarks>
public sealed record PartnerPull(double LeastFraction, double MostFraction, double HeightH)
{
    /// <summary>Whether one pull holds both.</summary>
    public bool IsHeld => LeastFraction <= MostFraction;

    /// <summary>The pull of the smallest size that holds both; NaN where none does.</summary>
    public double GentlestFraction => !IsHeld ? double.NaN : Math.Clamp(0, LeastFraction, MostFraction);

    /// <summary>The pull between two standing bodies.</summary>
    /// <param name="body">The first body.</param>
    /// <param name="partner">The second, in the same frame.</param>
    /// <param name="joins">Where they meet, 1 or more.</param>
    /// <param name="table">Whose mass fractions.</param>
    public static PartnerPull Of(SettledBody body, SettledBody partner, IReadOnlyList<Join> joins, BodyTable table)
    {
        var heightH = joins.Average(j => SettledPosture.Centre(body, j.On).ZH);
        var between = Middle(partner) - Middle(body);
        var towards = between.LengthH < 1e-9 ? new Point2(1, 0) : 1 / between.LengthH * between;
        var (first, second) = (Pulls(body, towards, heightH, table), Pulls(partner, -1 * towards, heightH, table));
        return new PartnerPull(Math.Max(first.Least, second.Least), Math.Min(first.Most, second.Most), heightH);
    }

    // The pulls towards the partner that keep a body's floor point between the ends of its own base.
    private static (double Least, double Most) Pulls(SettledBody body, Point2 towards, double heightH, BodyTable table)
    {
        double Along(Point2 p) => p.XH * towards.XH + p.YH * towards.YH;
        var centreH = Along(body.Skeleton.CentreOfMass(table).OnFloor);
        var ends = body.Contacts.SelectMany(c => c.Outline).Select(Along).ToArray();
        return ((ends.Min() - centreH) / heightH, (ends.Max() - centreH) / heightH);
    }

    private static Point2 Middle(SettledBody body) => 1.0 / body.Contacts.Count * body.Contacts.Aggregate(new Point2(0, 0), (sum, c) => sum + c.Middle);
}
