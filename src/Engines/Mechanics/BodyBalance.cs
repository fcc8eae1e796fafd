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
    public static BodyBalance Of(SettledBody body, BodyTable table = BodyTable.Mean)
    {
        var centre = body.Skeleton.CentreOfMass(table);
        var touching = body.Contacts.SelectMany(c => c.Outline).ToArray();
        var baseOfSupport = BaseOfSupport.Of(touching);
        var margin = BalanceMargin.Of(centre, baseOfSupport);
        var loads = LoadsOf(body, centre.OnFloor, margin.IsHeld);
        var headFraction = 0.0;
        for (var i = 0; i < loads.Shares.Count; i++)
            if (ContactPatch.IsHead(body.Contacts[i].Contact.Part)) headFraction += loads.Shares[i].ShareFraction;
        return new BodyBalance(centre, baseOfSupport, margin, loads, headFraction);
    }

    // Parts carry over an area, not at a point: two feet side by side hold a centre that is a little in front of their middles.
    private static LoadShares LoadsOf(SettledBody body, Point2 centre, bool isHeld)
    {
        var loads = LoadShares.Of(body.Contacts.Select(c => c.Middle).ToArray(), centre);
        return loads.Basis == LoadBasis.NotHeld && isHeld
            ? LoadShares.OfPrints(body.Contacts.Select(c => c.Outline).ToArray(), centre)
            : loads;
    }
}
