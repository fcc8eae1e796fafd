namespace Slantwise.Engines.Mechanics;

/// <summary>Where a part of the body meets the floor, and the outline it leaves there.</summary>
/// <param name="Part">The part.</param>
/// <param name="Segment">The segment it belongs to.</param>
/// <param name="Centre">In the segment's own axes; for a round part the centre of its roundness.</param>
/// <param name="RadiusH">How far the floor is from that centre, straight down; 0 for a flat part.</param>
/// <param name="Heading">In the segment's own axes: which way the outline's long side points.</param>
/// <param name="LengthH">The outline's size along the heading.</param>
/// <param name="BreadthH">The outline's size across it.</param>
public sealed record ContactPatch(
    ContactPart Part, SegmentKind Segment, Point3 Centre, double RadiusH, Point3 Heading, double LengthH, double BreadthH)
{
    // Sizes of hand and foot from the lengths' table; roundness of flesh and breadths of the others are own estimates.
    private static readonly ContactPatch[] All =
    [
        new(ContactPart.Foot, SegmentKind.Foot, new(SoleMiddleH, 0, -BodyLengths.AnkleHeightH), 0, Front, BodyLengths.FootH, BodyLengths.FootBreadthH),
        new(ContactPart.Toes, SegmentKind.Foot, new(BallH, 0, -BodyLengths.AnkleHeightH + .012), .012, Front, .050, BodyLengths.FootBreadthH),
        new(ContactPart.Heel, SegmentKind.Foot, new(-.020, 0, -.021), .018, Front, .030, .036),
        new(ContactPart.Instep, SegmentKind.Foot, new(.060, 0, -.012), .018, Front, .080, .045),
        new(ContactPart.Hand, SegmentKind.Hand, new(0, 0, -BodyLengths.HandH / 2), .008, Down, BodyLengths.HandH, .048),
        new(ContactPart.Fingertips, SegmentKind.Hand, new(0, 0, -BodyLengths.HandH + .006), .006, Down, .016, .044),
        new(ContactPart.Forearm, SegmentKind.Forearm, new(0, 0, -BodyLengths.ForearmH / 2), .018, Down, BodyLengths.ForearmH, .030),
        new(ContactPart.Elbow, SegmentKind.Forearm, new(0, 0, 0), .018, Down, .028, .028),
        new(ContactPart.Knee, SegmentKind.Shank, new(.004, 0, -.010), .030, Down, .045, .040),
        new(ContactPart.Shank, SegmentKind.Shank, new(.004, 0, -BodyLengths.ShankH / 2), .026, Down, .9 * BodyLengths.ShankH, .035),
        new(ContactPart.Seat, SegmentKind.LowerTrunk, new(-.012, 0, .012), .060, Front, .090, .170),
        new(ContactPart.LowerBack, SegmentKind.MiddleTrunk, new(0, 0, .030), .060, Up, .110, .130),
        new(ContactPart.UpperBack, SegmentKind.UpperTrunk, new(-.010, 0, .060), .052, Up, .075, .220),
        new(ContactPart.Shoulder, SegmentKind.UpperArm, new(0, 0, -.010), .032, Down, .060, .050),
        new(ContactPart.Hip, SegmentKind.Thigh, new(0, 0, -.005), .048, Down, .110, .070),
        new(ContactPart.Belly, SegmentKind.MiddleTrunk, new(0, 0, .020), .060, Up, .150, .130),
        new(ContactPart.Crown, SegmentKind.Head, new(.005, 0, BodyLengths.NeckH + BodyLengths.HeadH - .055), .055, Front, .045, .045),
        new(ContactPart.Forehead, SegmentKind.Head, new(.015, 0, BodyLengths.NeckH + BodyLengths.HeadH - .060), .052, Up, .040, .045),
        new(ContactPart.Thigh, SegmentKind.Thigh, new(.006, 0, -.72 * BodyLengths.ThighH), .040, Down, .060, .060),
    ];

    private const double SoleMiddleH = BodyLengths.FootH / 2 - BodyLengths.HeelBehindAnkleH;
    private const double BallH = .72 * BodyLengths.FootH - BodyLengths.HeelBehindAnkleH;

    private static Point3 Front => new(1, 0, 0);
    private static Point3 Down => new(0, 0, -1);
    private static Point3 Up => new(0, 0, 1);

    /// <summary>The patch of a part.</summary>
    /// <param name="part">The part.</param>
    public static ContactPatch Of(ContactPart part) => All[(int)part];

    /// <summary>Whether the part weighs on the head.</summary>
    /// <param name="part">The part.</param>
    public static bool IsHead(ContactPart part) => part is ContactPart.Crown or ContactPart.Forehead;

    /// <summary>The point that meets a floor straight below.</summary>
    /// <param name="frame">Where the segment is.</param>
    public Point3 Lowest(SegmentFrame frame) => frame.At(Centre) - new Point3(0, 0, RadiusH);

    /// <summary>The outline on the floor: eight points of a rounded rectangle, laid flat along the heading.</summary>
    /// <param name="frame">Where the segment is.</param>
    public Point2[] OutlineOnFloor(SegmentFrame frame)
    {
        var along = frame.Turned.Of(Heading).OnFloor;
        // A part that stands upright on its end leaves a print without a direction: take its front instead.
        if (along.LengthH < .2) along = frame.Turned.Of(Heading.XH == 0 ? Front : Up).OnFloor;
        along = 1 / along.LengthH * along;
        var (u, v) = ((LengthH / 2) * along, (BreadthH / 2) * new Point2(-along.YH, along.XH));
        var middle = Lowest(frame).OnFloor;
        var (front, back, left, right) = (middle + u, middle - u, middle + v, middle - v);
        var (longer, half) = (.75 * u, .5 * v);
        return [front + half, left + longer, left - longer, back + half, back - half, right - longer, right + longer, front - half];
    }
}
