namespace Slantwise.Engines.Mechanics;

/// <summary>A pose in a search: its unknowns, the segments, and about which axis each unknown turns which of them.</summary>
/// <remarks>Unknowns: the 28 joints, then a small turn of the pelvis about the three axes of the floor, then its move along them.</remarks>
internal sealed class PoseChain
{
    public const int JointCount = 28;
    public const int UnknownCount = JointCount + 6;
    private const int TurnAt = JointCount, MoveAt = JointCount + 3;

    // Which segments each joint moves, as bits in the order of the skeleton; the spine's two halves move different ones.
    private const int Head = 1 << 3, LeftArm = 7 << 4, RightArm = 7 << 10;
    private const int AboveChest = 1 << 2 | Head | LeftArm | RightArm, AboveNavel = 1 << 1 | AboveChest;

    private readonly double[] _anglesRad;
    private readonly Point3[] _axes = new Point3[JointCount], _secondAxes = new Point3[3];
    private readonly SegmentFrame _pelvis;

    public PoseChain(PlacedPose placed)
    {
        _anglesRad = placed.Pose.AnglesRad.ToArray();
        _pelvis = placed.Pelvis;
        Skeleton = Placed();
        Turn();
    }

    private PoseChain(double[] anglesRad, SegmentFrame pelvis)
    {
        (_anglesRad, _pelvis) = (anglesRad, pelvis);
        Skeleton = Placed();
    }

    public Skeleton Skeleton { get; }

    public ReadOnlySpan<double> AnglesRad => _anglesRad;

    public SegmentFrame Pelvis => _pelvis;

    /// <summary>The chain after a step of every unknown, joints held within their limits.</summary>
    public PoseChain Stepped(ReadOnlySpan<double> step)
    {
        var anglesRad = (double[])_anglesRad.Clone();
        for (var i = 0; i < JointCount; i++)
            anglesRad[i] = Math.Clamp(anglesRad[i] + step[i], LeastRad[i], MostRad[i]);
        var turn = new Point3(step[TurnAt], step[TurnAt + 1], step[TurnAt + 2]);
        var turned = turn.LengthH < 1e-15 ? _pelvis.Turned : Rotation.About(turn, turn.LengthH) * _pelvis.Turned;
        return new PoseChain(anglesRad, new SegmentFrame(_pelvis.Origin + new Point3(step[MoveAt], step[MoveAt + 1], step[MoveAt + 2]), turned));
    }

    public PlacedPose Pose(Pose near)
    {
        var joints = Mechanics.Pose.Of(_anglesRad, near.BowRad, near.LeanRad, near.TurnRad);
        return new PlacedPose(PlacedPose.Turned(joints, _pelvis.Turned), _pelvis);
    }

    public static double[] LeastRad { get; } = [.. Mechanics.Pose.JointsInOrder.Select(j => JointLimits.Of(j.Joint).LeastDeg * Math.PI / 180)];

    public static double[] MostRad { get; } = [.. Mechanics.Pose.JointsInOrder.Select(j => JointLimits.Of(j.Joint).MostDeg * Math.PI / 180)];

    /// <summary>Where a segment stands in the skeleton's order.</summary>
    public static int Index(SegmentKind kind, Side side) => (int)kind + (side == Side.Right ? 6 : 0);

    /// <summary>How a point of a segment moves with an unknown, per radian or per stature.</summary>
    public Point3 Slope(int unknown, int segment, Point3 at)
    {
        if (unknown >= MoveAt) return Unit(unknown - MoveAt);
        if (unknown >= TurnAt) return Point3.Cross(Unit(unknown - TurnAt), at - _pelvis.Origin);
        var frames = Skeleton.Frames;
        if (unknown < 3)
        {
            var slope = new Point3(0, 0, 0);
            if ((AboveNavel >> segment & 1) != 0) slope += Point3.Cross(_axes[unknown], at - frames[1].Origin);
            if ((AboveChest >> segment & 1) != 0) slope += Point3.Cross(_secondAxes[unknown], at - frames[2].Origin);
            return slope;
        }
        var pivot = Pivot(unknown);
        return IsMoved(unknown, pivot, segment) ? Point3.Cross(_axes[unknown], at - frames[pivot].Origin) : new Point3(0, 0, 0);
    }

    /// <summary>How a direction fixed to a segment turns with an unknown, per radian.</summary>
    public Point3 SlopeOfDirection(int unknown, int segment, Point3 direction)
    {
        if (unknown >= MoveAt) return new Point3(0, 0, 0);
        return Point3.Cross(Axis(unknown, segment), direction);
    }

    /// <summary>About which axis an unknown turns a segment, its length the turn per radian; 0 where it does not.</summary>
    public Point3 Axis(int unknown, int segment)
    {
        if (unknown >= TurnAt) return unknown >= MoveAt ? new Point3(0, 0, 0) : Unit(unknown - TurnAt);
        if (unknown < 3)
            return ((AboveNavel >> segment & 1) != 0 ? _axes[unknown] : new(0, 0, 0)) + ((AboveChest >> segment & 1) != 0 ? _secondAxes[unknown] : new(0, 0, 0));
        return IsMoved(unknown, Pivot(unknown), segment) ? _axes[unknown] : new Point3(0, 0, 0);
    }

    /// <summary>The axes, needed once a pose is accepted.</summary>
    public PoseChain Turn()
    {
        var frames = Skeleton.Frames;
        // The order of the turns is the skeleton's; each axis is taken after those that come before it.
        SpineAxes(frames[0].Turned, frames[1].Turned, _axes);
        SpineAxes(frames[1].Turned, frames[2].Turned, _secondAxes);
        var (chest, head) = (frames[2].Turned, frames[3].Turned);
        _axes[3] = chest.Y;
        _axes[4] = -1 * (chest * Rotation.Bow(_anglesRad[3])).X;
        _axes[5] = head.Z;
        foreach (var (first, arm, left) in ((int, int, int)[])[(6, 4, 1), (17, 10, -1)])
        {
            SocketAxes(first, chest, frames[arm].Turned, left);
            _axes[first + 3] = -1 * frames[arm].Turned.Y;
            _axes[first + 4] = -left * frames[arm + 1].Turned.Z;
            _axes[first + 5] = left * frames[arm + 1].Turned.X;
            SocketAxes(first + 6, frames[0].Turned, frames[arm + 3].Turned, left);
            _axes[first + 9] = frames[arm + 3].Turned.Y;
            _axes[first + 10] = -1 * frames[arm + 4].Turned.Y;
        }
        return this;
    }

    private Skeleton Placed() => Skeleton.Of(Mechanics.Pose.Of(_anglesRad, 0, 0, 0)).Moved(_pelvis.Turned, _pelvis.Origin);

    private void SpineAxes(Rotation below, Rotation above, Point3[] axes)
    {
        axes[0] = .5 * (below * Rotation.Turn(_anglesRad[2] / 2)).Y;
        axes[1] = -.5 * above.X;
        axes[2] = .5 * below.Z;
    }

    private void SocketAxes(int first, Rotation parent, Rotation limb, int left)
    {
        _axes[first] = -1 * parent.Y;
        _axes[first + 1] = left * (parent * Rotation.Bow(-_anglesRad[first])).X;
        _axes[first + 2] = left * limb.Z;
    }

    // The segment at whose upper end a joint sits.
    private static int Pivot(int joint)
    {
        if (joint < 6) return 3;
        var (of, arm) = joint < 17 ? (joint - 6, 4) : (joint - 17, 10);
        return of switch { < 3 => arm, < 5 => arm + 1, 5 => arm + 2, < 9 => arm + 3, 9 => arm + 4, _ => arm + 5 };
    }

    // A joint of a limb moves the segments from its own to the limb's end; the neck moves the head.
    private static bool IsMoved(int joint, int pivot, int segment)
    {
        if (joint < 6) return segment == 3;
        var end = pivot switch { < 7 => 7, < 10 => 10, < 13 => 13, _ => 16 };
        return segment >= pivot && segment < end;
    }

    private static Point3 Unit(int axis) => axis switch { 0 => new(1, 0, 0), 1 => new(0, 1, 0), _ => new(0, 0, 1) };
}
