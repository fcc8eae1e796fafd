namespace Slantwise.Engines.Mechanics;

/// <summary>What an author wants of a pose. The kinds are these and no others.</summary>
public abstract record PoseGoal
{
    private PoseGoal()
    {
    }

    /// <summary>A part touches the floor.</summary>
    /// <param name="Contact">The part.</param>
    public sealed record OnFloor(Contact Contact) : PoseGoal;

    /// <summary>A flat part lies flat: its underside faces straight down.</summary>
    /// <param name="Contact">A foot or a hand.</param>
    public sealed record Flat(Contact Contact) : PoseGoal;

    /// <summary>A part touches the floor at a place seen from another part.</summary>
    /// <param name="Contact">The part to place.</param>
    /// <param name="From">The part it is placed from.</param>
    /// <param name="By">To the front and to the left of it, in the floor's frame.</param>
    public sealed record Apart(Contact Contact, Contact From, Point2 By) : PoseGoal;

    /// <summary>A part rests on another: their middles meet, a flesh's thickness apart.</summary>
    /// <param name="Contact">The part that rests.</param>
    /// <param name="On">The part it rests on.</param>
    public sealed record Resting(Contact Contact, Contact On) : PoseGoal;

    /// <summary>The centre of mass is over a point seen from a part.</summary>
    /// <param name="From">The part.</param>
    /// <param name="By">To the front and to the left of it, in the floor's frame.</param>
    public sealed record CentreOver(Contact From, Point2 By) : PoseGoal;

    /// <summary>A joint keeps an angle.</summary>
    /// <param name="Joint">The movement.</param>
    /// <param name="Side">Left or right for a paired joint, else Middle.</param>
    /// <param name="AngleRad">The angle.</param>
    public sealed record Angle(Joint Joint, Side Side, double AngleRad) : PoseGoal;
}
