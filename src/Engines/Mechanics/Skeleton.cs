namespace Slantwise.Engines.Mechanics;

/// <summary>The sixteen segments of a pose, placed in one frame: the middle of the hips is the origin.</summary>
public sealed class Skeleton
{
    private const int SegmentCount = 16;
    private static readonly (SegmentKind Kind, Side Side)[] Order =
    [
        (SegmentKind.LowerTrunk, Side.Middle), (SegmentKind.MiddleTrunk, Side.Middle), (SegmentKind.UpperTrunk, Side.Middle), (SegmentKind.Head, Side.Middle),
        (SegmentKind.UpperArm, Side.Left), (SegmentKind.Forearm, Side.Left), (SegmentKind.Hand, Side.Left),
        (SegmentKind.Thigh, Side.Left), (SegmentKind.Shank, Side.Left), (SegmentKind.Foot, Side.Left),
        (SegmentKind.UpperArm, Side.Right), (SegmentKind.Forearm, Side.Right), (SegmentKind.Hand, Side.Right),
        (SegmentKind.Thigh, Side.Right), (SegmentKind.Shank, Side.Right), (SegmentKind.Foot, Side.Right),
    ];
    private static readonly (double MassFraction, Point3 Own)[][] Masses = [.. Enum.GetValues<BodyTable>()
        .Select(t => Order.Select(s => (SegmentFigures.MassFraction(s.Kind, t), OwnCentre(s.Kind, t))).ToArray())];

    private readonly SegmentFrame[] _frames;

    private Skeleton(SegmentFrame[] frames) => _frames = frames;

    /// <summary>The segments in their fixed order: trunk from below, head, left arm and leg, right arm and leg.</summary>
    public static IReadOnlyList<(SegmentKind Kind, Side Side)> Segments => Order;

    /// <summary>The skeleton of a pose.</summary>
    /// <param name="pose">The angles.</param>
    public static Skeleton Of(Pose pose)
    {
        var frames = new SegmentFrame[SegmentCount];
        var pelvis = Rotation.Turn(pose.TurnRad) * (Rotation.Bow(pose.BowRad) * Rotation.Lean(pose.LeanRad));
        frames[0] = new SegmentFrame(new(0, 0, 0), pelvis);
        // The spine bends in two equal parts: at the navel and below the chest.
        var half = SpineHalf(pose);
        frames[1] = new SegmentFrame(frames[0].At(new(0, 0, BodyLengths.LowerTrunkH)), pelvis * half);
        frames[2] = new SegmentFrame(frames[1].At(new(0, 0, BodyLengths.MiddleTrunkH)), frames[1].Turned * half);
        frames[3] = new SegmentFrame(frames[2].At(new(0, 0, BodyLengths.UpperTrunkH)), frames[2].Turned * Neck(pose));
        Arm(pose, Side.Left, frames.AsSpan(4, 3), frames[2]);
        Leg(pose, Side.Left, frames.AsSpan(7, 3), frames[0]);
        Arm(pose, Side.Right, frames.AsSpan(10, 3), frames[2]);
        Leg(pose, Side.Right, frames.AsSpan(13, 3), frames[0]);
        return new Skeleton(frames);
    }

    internal static IReadOnlyList<(double MassFraction, Point3 Own)> MassesOf(BodyTable table) => Masses[(int)table];

    internal ReadOnlySpan<SegmentFrame> Frames => _frames;

    /// <summary>Where a segment is.</summary>
    /// <param name="kind">The segment.</param>
    /// <param name="side">Left or right for a paired one, else Middle.</param>
    public SegmentFrame Frame(SegmentKind kind, Side side) => _frames[side switch
    {
        Side.Left => (int)kind,
        Side.Right => (int)kind + 6,
        _ => (int)kind,
    }];

    /// <summary>The whole skeleton turned and then moved.</summary>
    /// <param name="turned">The turn about the origin.</param>
    /// <param name="moved">The move after it.</param>
    public Skeleton Moved(Rotation turned, Point3 moved)
    {
        var frames = new SegmentFrame[SegmentCount];
        for (var i = 0; i < frames.Length; i++)
            frames[i] = new SegmentFrame(turned.Of(_frames[i].Origin) + moved, turned * _frames[i].Turned);
        return new Skeleton(frames);
    }

    /// <summary>The body's centre of mass.</summary>
    /// <param name="table">Whose mass fractions.</param>
    public Point3 CentreOfMass(BodyTable table)
    {
        Span<PointMass> masses = stackalloc PointMass[SegmentCount];
        var figures = Masses[(int)table];
        for (var i = 0; i < SegmentCount; i++)
            masses[i] = new PointMass(figures[i].MassFraction, _frames[i].At(figures[i].Own));
        return Mechanics.CentreOfMass.Of(masses);
    }

    private static Rotation SpineHalf(Pose pose) =>
        Rotation.Turn(pose.AngleRad(Joint.SpineTwist, Side.Middle) / 2)
        * (Rotation.Bow(pose.AngleRad(Joint.SpineFlexion, Side.Middle) / 2) * Rotation.Lean(pose.AngleRad(Joint.SpineLean, Side.Middle) / 2));

    private static Rotation Neck(Pose pose) =>
        Rotation.Bow(pose.AngleRad(Joint.NeckFlexion, Side.Middle))
        * (Rotation.Lean(pose.AngleRad(Joint.NeckLean, Side.Middle)) * Rotation.Turn(pose.AngleRad(Joint.NeckTurn, Side.Middle)));

    // A limb hangs along −Z; flexion takes it to the front, abduction to its own side, rotation turns it about itself.
    private static Rotation Socket(double flexionRad, double abductionRad, double rotationRad, int left) =>
        Rotation.Bow(-flexionRad) * (Rotation.Lean(-left * abductionRad) * Rotation.Turn(left * rotationRad));

    private static void Arm(Pose pose, Side side, Span<SegmentFrame> arm, SegmentFrame chest)
    {
        var left = side == Side.Left ? 1 : -1;
        var shoulder = chest.At(new(0, left * BodyLengths.HalfShoulderH, BodyLengths.ShoulderLineH));
        arm[0] = new SegmentFrame(shoulder, chest.Turned * Socket(
            pose.AngleRad(Joint.ShoulderFlexion, side), pose.AngleRad(Joint.ShoulderAbduction, side), pose.AngleRad(Joint.ShoulderRotation, side), left));
        arm[1] = new SegmentFrame(arm[0].At(new(0, 0, -BodyLengths.UpperArmH)), arm[0].Turned
            * (Rotation.Bow(-pose.AngleRad(Joint.ElbowFlexion, side)) * Rotation.Turn(-left * pose.AngleRad(Joint.ForearmPronation, side))));
        arm[2] = new SegmentFrame(arm[1].At(new(0, 0, -BodyLengths.ForearmH)), arm[1].Turned
            * Rotation.Lean(-left * pose.AngleRad(Joint.WristExtension, side)));
    }

    private static void Leg(Pose pose, Side side, Span<SegmentFrame> leg, SegmentFrame pelvis)
    {
        var left = side == Side.Left ? 1 : -1;
        leg[0] = new SegmentFrame(pelvis.At(new(0, left * BodyLengths.HalfHipH, 0)), pelvis.Turned * Socket(
            pose.AngleRad(Joint.HipFlexion, side), pose.AngleRad(Joint.HipAbduction, side), pose.AngleRad(Joint.HipRotation, side), left));
        leg[1] = new SegmentFrame(leg[0].At(new(0, 0, -BodyLengths.ThighH)), leg[0].Turned * Rotation.Bow(pose.AngleRad(Joint.KneeFlexion, side)));
        leg[2] = new SegmentFrame(leg[1].At(new(0, 0, -BodyLengths.ShankH)), leg[1].Turned * Rotation.Bow(-pose.AngleRad(Joint.AnkleFlexion, side)));
    }

    private static Point3 OwnCentre(SegmentKind kind, BodyTable table)
    {
        var fraction = SegmentFigures.CentreFraction(kind, table);
        return kind switch
        {
            SegmentKind.LowerTrunk => new(0, 0, (1 - fraction) * BodyLengths.LowerTrunkH),
            SegmentKind.MiddleTrunk => new(0, 0, (1 - fraction) * BodyLengths.MiddleTrunkH),
            SegmentKind.UpperTrunk => new(0, 0, (1 - fraction) * BodyLengths.UpperTrunkH),
            SegmentKind.Head => new(0, 0, BodyLengths.NeckH + (1 - fraction) * BodyLengths.HeadH),
            SegmentKind.UpperArm => new(0, 0, -fraction * BodyLengths.UpperArmH),
            SegmentKind.Forearm => new(0, 0, -fraction * BodyLengths.ForearmH),
            SegmentKind.Hand => new(0, 0, -fraction * BodyLengths.KnuckleH),
            SegmentKind.Thigh => new(0, 0, -fraction * BodyLengths.ThighH),
            SegmentKind.Shank => new(0, 0, -fraction * BodyLengths.ShankH),
            SegmentKind.Foot => new(fraction * BodyLengths.FootH - BodyLengths.HeelBehindAnkleH, 0, -BodyLengths.AnkleHeightH / 2),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such segment."),
        };
    }
}
