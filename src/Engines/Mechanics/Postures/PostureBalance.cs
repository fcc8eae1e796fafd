namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>Everything the engine says about a posture of one body or two.</summary>
/// <param name="Whole">All bodies taken as one over one base on the floor; contacts in the order of the first body's, then the partner's.</param>
/// <param name="Wall">How it leans on the wall; none without one.</param>
/// <param name="Carried">The carried partner on the first body; none where nobody is carried.</param>
/// <param name="Pull">What two bodies that both stand ask of each other; none for one body or a carried partner.</param>
public sealed record PostureBalance(BodyBalance Whole, WallLean? Wall, CarriedBalance? Carried, PartnerPull? Pull)
{
    /// <summary>Whether it can be held still.</summary>
    public bool IsHeld => Whole.Margin.IsHeld && Carried is not { IsHeld: false } && Pull is not { IsHeld: false };

    /// <summary>The balance of a settled posture.</summary>
    /// <param name="settled">On the floor.</param>
    /// <param name="table">Whose mass fractions, for both bodies.</param>
    public static PostureBalance Of(SettledPosture settled, BodyTable table = BodyTable.Mean)
    {
        var towardsWall = settled.TowardsWall;
        var whole = BodyBalance.Of(settled.Bodies, table, towardsWall);
        var wall = towardsWall is { } towards ? WallLean.Of(settled, towards, whole) : null;
        return settled is not { Partner: { } partner, Posture.Partner: { } wish }
            ? new PostureBalance(whole, wall, null, null)
            : wish.IsCarried
                ? new PostureBalance(whole, wall, CarriedBalance.Of(settled.Body, partner, wish.Joins, table), null)
                : new PostureBalance(whole, wall, null, PartnerPull.Of(settled.Body, partner, wish.Joins, table));
    }
}
