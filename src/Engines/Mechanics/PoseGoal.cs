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

    /// <summary>A part touches the floor at a place of the floor's frame.</summary>
    /// <param name="Contact">The part.</param>
    /// <param name="At">The place.</param>
    public sealed record Placed(Contact Contact, Point2 At) : PoseGoal;

    /// <summary>A part's segment stays turned as it is.</summary>
    /// <param name="Contact">The part, a foot or a hand as a rule.</param>
    /// <param name="As">How its segment is turned.</param>
    public sealed record Turned(Contact Contact, Rotation As) : PoseGoal;

    /// <summary>The print of a part keeps its direction on the floor; a foot, forearm, shin or thigh lies level along it too, and may roll.</summary>
    /// <param name="Contact">The part.</param>
    /// <param name="Towards">Where the long side of the print points, of any length but 0.</param>
    public sealed record Along(Contact Contact, Point2 Towards) : PoseGoal;

    /// <summary>The middle of a part is at a place in space: at a wall, or in a partner's hand.</summary>
    /// <param name="Contact">The part.</param>
    /// <param name="At">The place, in the floor's frame.</param>
    public sealed record Held(Contact Contact, Point3 At) : PoseGoal;

    /// <summary>A point of a segment appears at a place, seen along a line of sight: near or far hardly matters.</summary>
    /// <param name="Segment">The segment.</param>
    /// <param name="Side">Left or right for a paired one, else Middle.</param>
    /// <param name="Own">The point in the segment's own axes.</param>
    /// <param name="At">A point of the wished line of sight, best as near as the point is now, in the floor's frame.</param>
    /// <param name="Sight">The direction of sight, of any length but 0.</param>
    public sealed record Seen(SegmentKind Segment, Side Side, Point3 Own, Point3 At, Point3 Sight) : PoseGoal;

    /// <summary>A point of a segment stays above a height: bodies do not pass through floors.</summary>
    /// <param name="Segment">The segment.</param>
    /// <param name="Side">Left or right for a paired one, else Middle.</param>
    /// <param name="Own">The point in the segment's own axes.</param>
    /// <param name="HeightH">The least height, in statures.</param>
    public sealed record Above(SegmentKind Segment, Side Side, Point3 Own, double HeightH) : PoseGoal;

    /// <summary>The pelvis is turned to a direction on the floor: its front points to neither side of it.</summary>
    /// <param name="Towards">The direction, of any length but 0.</param>
    public sealed record Facing(Point2 Towards) : PoseGoal;
}
