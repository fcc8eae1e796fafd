namespace Slantwise.Engines.Mechanics;

/// <summary>The angles of a body: every joint, and how the pelvis is turned in space.</summary>
/// <remarks>Upright standing is all zeros. A bow of 90° is face down, −90° on the back, 180° upside down.</remarks>
public sealed class Pose
{
    private const int MiddleCount = (int)Joint.NeckTurn + 1;
    private const int PairedCount = (int)Joint.AnkleFlexion + 1 - MiddleCount;
    private readonly double[] _anglesRad;

    private Pose(double[] anglesRad, double bowRad, double leanRad, double turnRad) =>
        (_anglesRad, BowRad, LeanRad, TurnRad) = (anglesRad, bowRad, leanRad, turnRad);

    /// <summary>Upright, arms hanging.</summary>
    public static Pose Upright { get; } = new(new double[MiddleCount + 2 * PairedCount], 0, 0, 0);

    /// <summary>How far the pelvis is bowed to the front.</summary>
    public double BowRad { get; }

    /// <summary>How far the pelvis is leaned to the left, after the bow.</summary>
    public double LeanRad { get; }

    /// <summary>How far the pelvis is turned to the left.</summary>
    public double TurnRad { get; }

    /// <summary>A joint's angle.</summary>
    /// <param name="joint">The movement.</param>
    /// <param name="side">Left or right for a paired joint; not looked at for the spine and the neck.</param>
    public double AngleRad(Joint joint, Side side) => _anglesRad[Index(joint, side)];

    /// <summary>The same pose with one joint set.</summary>
    /// <param name="joint">The movement.</param>
    /// <param name="side">Left or right; Middle sets both sides of a paired joint.</param>
    /// <param name="angleRad">The angle; limits are checked when a posture is read, not here.</param>
    public Pose With(Joint joint, Side side, double angleRad)
    {
        var anglesRad = (double[])_anglesRad.Clone();
        if (IsPaired(joint) && side == Side.Middle)
            anglesRad[Index(joint, Side.Left)] = anglesRad[Index(joint, Side.Right)] = angleRad;
        else
            anglesRad[Index(joint, side)] = angleRad;
        return new Pose(anglesRad, BowRad, LeanRad, TurnRad);
    }

    /// <summary>The same joints with the pelvis turned otherwise in space.</summary>
    /// <param name="bowRad">Bow to the front.</param>
    /// <param name="leanRad">Lean to the left.</param>
    /// <param name="turnRad">Turn to the left.</param>
    public Pose Placed(double bowRad, double leanRad, double turnRad) => new(_anglesRad, bowRad, leanRad, turnRad);

    /// <summary>All angles at once, in the order of <see cref="JointsInOrder"/>, for searches that try many poses.</summary>
    internal static Pose Of(ReadOnlySpan<double> anglesRad, double bowRad, double leanRad, double turnRad) => new(anglesRad.ToArray(), bowRad, leanRad, turnRad);

    /// <summary>Every joint of every side once: the middle ones, the left ones, the right ones.</summary>
    internal static IReadOnlyList<(Joint Joint, Side Side)> JointsInOrder { get; } =
    [
        .. Enum.GetValues<Joint>().Where(j => !IsPaired(j)).Select(j => (j, Side.Middle)),
        .. Enum.GetValues<Joint>().Where(IsPaired).Select(j => (j, Side.Left)),
        .. Enum.GetValues<Joint>().Where(IsPaired).Select(j => (j, Side.Right)),
    ];

    internal ReadOnlySpan<double> AnglesRad => _anglesRad;

    /// <summary>Left for right, as in a mirror.</summary>
    public Pose Mirrored()
    {
        var anglesRad = new double[_anglesRad.Length];
        foreach (var joint in Enum.GetValues<Joint>())
        {
            if (IsPaired(joint))
            {
                anglesRad[Index(joint, Side.Left)] = AngleRad(joint, Side.Right);
                anglesRad[Index(joint, Side.Right)] = AngleRad(joint, Side.Left);
            }
            else
            {
                var isSideways = joint is Joint.SpineLean or Joint.SpineTwist or Joint.NeckLean or Joint.NeckTurn;
                anglesRad[Index(joint, Side.Middle)] = (isSideways ? -1 : 1) * AngleRad(joint, Side.Middle);
            }
        }
        return new Pose(anglesRad, BowRad, -LeanRad, -TurnRad);
    }

    /// <summary>Whether a body has two of a joint.</summary>
    /// <param name="joint">The movement.</param>
    public static bool IsPaired(Joint joint) => (int)joint >= MiddleCount;

    private static int Index(Joint joint, Side side) => (int)joint < MiddleCount
        ? (int)joint
        : side switch
        {
            Side.Left => (int)joint,
            Side.Right => (int)joint + PairedCount,
            _ => throw new ArgumentOutOfRangeException(nameof(side), side, $"{joint} is paired: say left or right."),
        };
}
