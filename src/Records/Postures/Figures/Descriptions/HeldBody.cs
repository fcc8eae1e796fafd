using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>A body as its description looks at it: directions, places and bends.</summary>
/// <param name="body">On the floor, or carried.</param>
/// <param name="pose">Its angles.</param>
/// <param name="carrying">What carries it: on the floor, or on the partner for one who is carried.</param>
/// <param name="holding">What else meets the partner.</param>
internal sealed class HeldBody(SettledBody body, Pose pose, IReadOnlyList<Contact> carrying, IReadOnlyList<Contact> holding)
{
    private const double Deg = 180 / Math.PI;

    public static IReadOnlyList<Side> Sides { get; } = [Side.Left, Side.Right];

    public static Side Other(Side side) => side == Side.Left ? Side.Right : Side.Left;

    public SegmentFrame Frame(SegmentKind kind, Side side = Side.Middle) => body.Skeleton.Frame(kind, side);

    /// <summary>Whether a part carries.</summary>
    public bool Carries(Side side, params ReadOnlySpan<ContactPart> parts) => Has(carrying, side, parts);

    /// <summary>Whether a part carries or holds the partner.</summary>
    public bool Touches(Side side, params ReadOnlySpan<ContactPart> parts) => Has(carrying, side, parts) || Has(holding, side, parts);

    public double BendDeg(Joint joint, Side side) => pose.AngleRad(joint, side) * Deg;

    /// <summary>From the hips to the shoulders.</summary>
    public Point3 TrunkUp => Unit(Frame(SegmentKind.UpperTrunk).At(new(0, 0, BodyLengths.UpperTrunkH)) - Hips);

    /// <summary>Out of the chest and belly.</summary>
    public Point3 TrunkFront => Unit(Frame(SegmentKind.LowerTrunk).Turned.X + Frame(SegmentKind.UpperTrunk).Turned.X);

    public Point3 TrunkLeft => Frame(SegmentKind.LowerTrunk).Turned.Y;

    public Point3 Hips => Frame(SegmentKind.LowerTrunk).Origin;

    public Point3 Head => Frame(SegmentKind.Head).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH / 2));

    public Point3 Hip(Side side) => Frame(SegmentKind.Thigh, side).Origin;

    public Point3 Knee(Side side) => Frame(SegmentKind.Shank, side).Origin;

    public Point3 Ankle(Side side) => Frame(SegmentKind.Foot, side).Origin;

    public Point3 Shoulder(Side side) => Frame(SegmentKind.UpperArm, side).Origin;

    public Point3 Wrist(Side side) => Frame(SegmentKind.Hand, side).Origin;

    public Point3 Palm(Side side) => Frame(SegmentKind.Hand, side).At(new(0, 0, -BodyLengths.HandH / 2));

    /// <summary>Which way the body would walk: its front on the floor, of one who is bowed the way the head points.</summary>
    public Point3 Heading
    {
        get
        {
            var front = TrunkFront;
            var ahead = front + -front.ZH * TrunkUp;
            var flat = new Point3(ahead.XH, ahead.YH, 0);
            return flat.LengthH < 1e-6 ? new(1, 0, 0) : Unit(flat);
        }
    }

    private static bool Has(IReadOnlyList<Contact> contacts, Side side, ReadOnlySpan<ContactPart> parts)
    {
        foreach (var contact in contacts)
            if (contact.Side == side && parts.Contains(contact.Part)) return true;
        return false;
    }

    public static Point3 Unit(Point3 v) => 1 / Math.Max(1e-12, v.LengthH) * v;

    public static double Dot(Point3 a, Point3 b) => a.XH * b.XH + a.YH * b.YH + a.ZH * b.ZH;

    public static double AngleDeg(Point3 a, Point3 b) => Math.Acos(Math.Clamp(Dot(Unit(a), Unit(b)), -1, 1)) * Deg;
}
