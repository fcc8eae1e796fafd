namespace Slantwise.Engines.Mechanics;

/// <summary>Everything the engine says about a settled body.</summary>
/// <param name="Centre">The centre of mass in the floor's frame.</param>
/// <param name="Base">The base of support.</param>
/// <param name="Margin">How safely the line of gravity falls inside it.</param>
/// <param name="Loads">What each contact carries, in the order of the contacts.</param>
/// <param name="HeadFraction">Share of the body's weight on the head; 0 where the head does not touch.</param>
public sealed record BodyBalance(Point3 Centre, BaseOfSupport Base, BalanceMargin Margin, LoadShares Loads, double HeadFraction)
{
    /// <summary>The balance of a settled body.</summary>
    /// <param name="body">The body on the floor.</param>
    /// <param name="table">Whose mass fractions.</param>
    public static BodyBalance Of(SettledBody body, BodyTable table = BodyTable.Mean) => Of([body], table, null);

    /// <summary>The balance of bodies that hold each other, all taken as one.</summary>
    /// <param name="bodies">Equally heavy, in one frame, at least one on the floor.</param>
    /// <param name="table">Whose mass fractions, for all of them.</param>
    /// <param name="towardsWall">Which way a wall props them, of length 1; none without a wall.</param>
    public static BodyBalance Of(IReadOnlyList<SettledBody> bodies, BodyTable table, Point2? towardsWall)
    {
        var centre = 1.0 / bodies.Count * bodies.Aggregate(new Point3(0, 0, 0), (sum, body) => sum + body.Skeleton.CentreOfMass(table));
        var contacts = bodies.SelectMany(b => b.Contacts).ToArray();
        var baseOfSupport = BaseOfSupport.Of(contacts.SelectMany(c => c.Outline).ToArray());
        var margin = BalanceMargin.Of(centre, baseOfSupport, towardsWall);
        var loads = LoadsOf(contacts, FloorPoint(centre.OnFloor, baseOfSupport, towardsWall), margin.IsHeld);
        var headFraction = 0.0;
        for (var i = 0; i < loads.Shares.Count; i++)
            if (ContactPatch.IsHead(contacts[i].Contact.Part)) headFraction += loads.Shares[i].ShareFraction;
        return new BodyBalance(centre, baseOfSupport, margin, loads, headFraction);
    }

    // What the floor has to carry lies under the centre, or where the least push of the wall brings it: a hair inside the base.
    private static Point2 FloorPoint(Point2 centre, BaseOfSupport baseOfSupport, Point2? towardsWall)
    {
        if (towardsWall is not { } towards) return centre;
        var backH = baseOfSupport.DistanceBackH(centre, towards);
        return backH > 0 ? centre - (backH + 1e-7) * towards : centre;
    }

    // Parts carry over an area, not at a point: two feet side by side hold a centre that is a little in front of their middles.
    private static LoadShares LoadsOf(SettledContact[] contacts, Point2 centre, bool isHeld)
    {
        var loads = LoadShares.Of(contacts.Select(c => c.Middle).ToArray(), centre);
        return loads.Basis == LoadBasis.NotHeld && isHeld
            ? LoadShares.OfPrints(contacts.Select(c => c.Outline).ToArray(), centre)
            : loads;
    }
}
