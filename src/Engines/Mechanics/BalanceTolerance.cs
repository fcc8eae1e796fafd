namespace Slantwise.Engines.Mechanics;

/// <summary>How forgiving a posture is: the share of small joint errors that keep it balanced.</summary>
/// <param name="HeldFraction">Share of the random errors after which the line of gravity still falls on the base.</param>
/// <param name="ErrorDeg">The standard deviation of each joint's error, stated with every answer.</param>
/// <param name="SampleCount">How many errors were tried.</param>
/// <param name="ForwardH">Standard deviation of the centre's shift to the front, in statures.</param>
/// <param name="SidewaysH">Standard deviation of its shift to the side, in statures.</param>
public sealed record BalanceTolerance(double HeldFraction, double ErrorDeg, int SampleCount, double ForwardH, double SidewaysH)
{
    private const double StepRad = 1e-4;

    /// <summary>The tolerance of a posture.</summary>
    /// <param name="pose">The angles.</param>
    /// <param name="contacts">What touches.</param>
    /// <param name="errorDeg">Standard deviation of each joint's independent error, more than 0 and at most 10.</param>
    /// <param name="sampleCount">How many errors to try, 1 or more.</param>
    /// <param name="seed">Any; the same seed gives the same answer.</param>
    /// <param name="table">Whose mass fractions.</param>
    /// <returns>The support stays where it is, and the centre moves in proportion to the errors: small errors only.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An error outside its range; no sample.</exception>
    public static BalanceTolerance Of(
        Pose pose, IReadOnlyList<Contact> contacts, double errorDeg = 2, int sampleCount = 1000, ulong seed = 1, BodyTable table = BodyTable.Mean)
    {
        if (!(errorDeg is > 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(errorDeg), errorDeg, "A joint's error is more than 0 and at most 10 degrees.");
        if (sampleCount < 1) throw new ArgumentOutOfRangeException(nameof(sampleCount), sampleCount, "At least one error is tried.");
        var body = SettledBody.Of(pose, contacts);
        var balance = BodyBalance.Of(body, table);
        var (front, side, both) = Spread(pose, body, table, errorDeg * Math.PI / 180);

        // The shift is a sum of many small ones: normal, with this covariance. Its triangular root turns two deviates into a shift.
        var frontSd = Math.Sqrt(front);
        var slope = frontSd > 0 ? both / frontSd : 0;
        var restSd = Math.Sqrt(Math.Max(0, side - slope * slope));
        var normal = new SeededNormal(seed);
        var heldCount = 0;
        for (var i = 0; i < sampleCount; i++)
        {
            var (first, second) = normal.Pair();
            var shifted = balance.Centre.OnFloor + new Point2(frontSd * first, slope * first + restSd * second);
            if (balance.Base.Contains(shifted)) heldCount++;
        }
        return new BalanceTolerance((double)heldCount / sampleCount, errorDeg, sampleCount, frontSd, Math.Sqrt(side));
    }

    private static (double Front, double Side, double Both) Spread(Pose pose, SettledBody body, BodyTable table, double errorRad)
    {
        var (front, side, both) = (0.0, 0.0, 0.0);
        var before = body.Skeleton.CentreOfMass(table);
        foreach (var joint in Enum.GetValues<Joint>())
        {
            foreach (var of in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
            {
                var moved = SupportKept(Skeleton.Of(pose.With(joint, of, pose.AngleRad(joint, of) + StepRad)), body);
                var shift = errorRad / StepRad * (moved.CentreOfMass(table) - before);
                front += shift.XH * shift.XH;
                side += shift.YH * shift.YH;
                both += shift.XH * shift.YH;
            }
        }
        return (front, side, both);
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
