namespace Slantwise.Engines.Mechanics;

/// <summary>How far small errors of all joints shift the centre of mass over a support that stays where it is.</summary>
/// <param name="ErrorDeg">The standard deviation of each joint's independent error.</param>
/// <param name="ForwardH">Standard deviation of the shift to the front, in statures.</param>
/// <param name="SidewaysH">Standard deviation of the shift to the side, in statures.</param>
/// <param name="BothH2">Their covariance, in square statures.</param>
public readonly record struct CentreSpread(double ErrorDeg, double ForwardH, double SidewaysH, double BothH2)
{
    private const double StepRad = 1e-4;

    /// <summary>The standard deviation of the shift along a direction, in statures.</summary>
    /// <param name="direction">On the floor, of length 1.</param>
    public double AlongH(Point2 direction) => Math.Sqrt(Math.Max(0,
        direction.XH * direction.XH * ForwardH * ForwardH + direction.YH * direction.YH * SidewaysH * SidewaysH
        + 2 * direction.XH * direction.YH * BothH2));

    /// <summary>The spread of a posture's centre.</summary>
    /// <param name="pose">The angles.</param>
    /// <param name="body">The same pose on the floor.</param>
    /// <param name="errorDeg">Standard deviation of each joint's independent error, more than 0 and at most 10.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <returns>The centre moves in proportion to the errors: small errors only.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An error outside its range.</exception>
    public static CentreSpread Of(Pose pose, SettledBody body, double errorDeg, BodyTable table = BodyTable.Mean)
    {
        if (!(errorDeg is > 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(errorDeg), errorDeg, "A joint's error is more than 0 and at most 10 degrees.");
        var perStep = errorDeg * Math.PI / 180 / StepRad;
        var (front, side, both) = (0.0, 0.0, 0.0);
        var before = body.Skeleton.CentreOfMass(table);
        foreach (var (joint, of) in Pose.JointsInOrder)
        {
            var moved = SupportKept(Skeleton.Of(pose.With(joint, of, pose.AngleRad(joint, of) + StepRad)), body);
            var shift = perStep * (moved.CentreOfMass(table) - before);
            front += shift.XH * shift.XH;
            side += shift.YH * shift.YH;
            both += shift.XH * shift.YH;
        }
        return new CentreSpread(errorDeg, Math.Sqrt(front), Math.Sqrt(side), both);
    }

    // With a joint moved, the body is hung on its supports again: the mean of what each supporting segment alone would ask for.
    private static Skeleton SupportKept(Skeleton moved, SettledBody body)
    {
        var pelvis = body.Skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle);
        var hung = moved.Moved(pelvis.Turned * moved.Frame(SegmentKind.LowerTrunk, Side.Middle).Turned.Inverse(), pelvis.Origin);
        var (turn, shift) = (new Point3(0, 0, 0), new Point3(0, 0, 0));
        foreach (var (was, now, _) in Supports(hung, body)) turn += SmallTurn(now.Turned, was.Turned);
        var turned = About(1.0 / body.Contacts.Count * turn);
        foreach (var (was, now, patch) in Supports(hung, body)) shift += was.At(patch.Centre) - turned.Of(now.At(patch.Centre));
        return hung.Moved(turned, 1.0 / body.Contacts.Count * shift);
    }

    private static IEnumerable<(SegmentFrame Was, SegmentFrame Now, ContactPatch Patch)> Supports(Skeleton hung, SettledBody body) =>
        from settled in body.Contacts
        let patch = ContactPatch.Of(settled.Contact.Part)
        select (body.Skeleton.Frame(patch.Segment, settled.Contact.Side), hung.Frame(patch.Segment, settled.Contact.Side), patch);

    // The small turn from one set of axes to another, as axis times angle.
    private static Point3 SmallTurn(Rotation from, Rotation to) =>
        .5 * (Point3.Cross(from.X, to.X) + Point3.Cross(from.Y, to.Y) + Point3.Cross(from.Z, to.Z));

    private static Rotation About(Point3 turn) => turn.LengthH < 1e-15 ? Rotation.None : Rotation.About(turn, turn.LengthH);
}
