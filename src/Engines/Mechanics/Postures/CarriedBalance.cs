namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>A carried partner on the parts of the other body, seen from above.</summary>
/// <param name="Centre">The partner's centre of mass in the floor's frame.</param>
/// <param name="Margin">Of the partner alone over the area of the joins; a rope's width for a line of two.</param>
/// <param name="Loads">What each join carries of the partner's weight, in the order of the joins.</param>
/// <remarks>Joins carry straight down, at whatever height: grips that pull sideways are not in it.</remarks>
public sealed record CarriedBalance(Point3 Centre, BalanceMargin Margin, LoadShares Loads)
{
    /// <summary>Whether the partner's line of gravity falls between the joins.</summary>
    public bool IsHeld => Margin.IsHeld;

    /// <summary>The balance of a carried partner.</summary>
    /// <param name="body">The body that carries.</param>
    /// <param name="partner">The body that is carried, in the same frame.</param>
    /// <param name="joins">Where they meet, 1 or more.</param>
    /// <param name="table">Whose mass fractions.</param>
    public static CarriedBalance Of(SettledBody body, SettledBody partner, IReadOnlyList<Join> joins, BodyTable table)
    {
        var centre = partner.Skeleton.CentreOfMass(table);
        var prints = joins.Select(j => ContactPatch.Of(j.Own.Part).OutlineOnFloor(partner.Skeleton.Frame(ContactPatch.Of(j.Own.Part).Segment, j.Own.Side))).ToArray();
        var loads = LoadShares.OfPrints(prints, centre.OnFloor);
        var joinHeightH = joins.Average(j => SettledPosture.Centre(body, j.On).ZH);
        var aboveH = Math.Max(1e-6, centre.ZH - joinHeightH);
        return new CarriedBalance(centre, BalanceMargin.Of(centre with { ZH = aboveH }, BaseOfSupport.Of(prints.SelectMany(p => p).ToArray())), loads);
    }
}
