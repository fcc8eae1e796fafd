namespace Slantwise.Engines.Mechanics;

/// <summary>A pose and where it is: the pelvis in the frame of a floor.</summary>
/// <param name="Pose">The angles; its bow, lean and turn are those of the pelvis.</param>
/// <param name="Pelvis">The middle of the hips and how the pelvis is turned.</param>
public readonly record struct PlacedPose(Pose Pose, SegmentFrame Pelvis)
{
    /// <summary>The pose of a body that was put on the floor, where it was put.</summary>
    /// <param name="pose">The angles it was put there with.</param>
    /// <param name="body">The body on the floor.</param>
    public static PlacedPose Of(Pose pose, SettledBody body)
    {
        var pelvis = body.Skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle);
        return new PlacedPose(Turned(pose, pelvis.Turned), pelvis);
    }

    /// <summary>The body where it is.</summary>
    public Skeleton Skeleton() => Mechanics.Skeleton.Of(Pose.Placed(0, 0, 0)).Moved(Pelvis.Turned, Pelvis.Origin);

    // Bow, lean and turn of a pelvis. Two triples give the same pelvis, and at a right-angled bow many do: the one nearest to the pose's own is kept.
    internal static Pose Turned(Pose pose, Rotation pelvis)
    {
        var bowRad = Math.Asin(Math.Clamp(-pelvis.X.ZH, -1, 1));
        var (first, second) = (Angles(pose, pelvis, bowRad), Angles(pose, pelvis, Math.PI - bowRad));
        var (bow, lean, turn, _) = first.FarRad <= second.FarRad ? first : second;
        return pose.Placed(bow, lean, turn);
    }

    private static (double BowRad, double LeanRad, double TurnRad, double FarRad) Angles(Pose near, Rotation pelvis, double bowRad)
    {
        var flat = Math.Cos(bowRad);
        var turnRad = Math.Abs(flat) < 1e-7 ? near.TurnRad : Math.Atan2(Math.Sign(flat) * pelvis.X.YH, Math.Sign(flat) * pelvis.X.XH);
        var bowed = Rotation.Turn(turnRad) * Rotation.Bow(bowRad);
        var leanRad = Math.Atan2(-Point3.Dot(pelvis.Y, bowed.Z), Point3.Dot(pelvis.Y, bowed.Y));
        (bowRad, leanRad, turnRad) = (Near(bowRad, near.BowRad), Near(leanRad, near.LeanRad), Near(turnRad, near.TurnRad));
        return (bowRad, leanRad, turnRad, Math.Abs(bowRad - near.BowRad) + Math.Abs(leanRad - near.LeanRad) + Math.Abs(turnRad - near.TurnRad));
    }

    private static double Near(double angleRad, double wishRad) => angleRad - 2 * Math.PI * Math.Round((angleRad - wishRad) / (2 * Math.PI));
}
