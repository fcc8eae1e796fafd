namespace Slantwise.Engines.Mechanics;

/// <summary>A body put on the floor by its contacts.</summary>
/// <param name="Skeleton">The segments in the floor's frame: Z is height, the origin lies below the middle of the contacts.</param>
/// <param name="Contacts">In the order given.</param>
/// <param name="GapH">The largest distance of a contact from the floor, in statures; 0 where all touch.</param>
/// <param name="TurnedRad">How far the body had to be turned for its contacts to meet the floor.</param>
public sealed record SettledBody(Skeleton Skeleton, IReadOnlyList<SettledContact> Contacts, double GapH, double TurnedRad)
{
    // Contacts are known to about a centimetre of a child of 1.40 m; more than that does not touch.
    /// <summary>The largest gap that still counts as touching, in statures: about 1.4 cm of 1.40 m.</summary>
    public const double TouchingH = .010;

    /// <summary>The largest turn that still is the same posture: a standing body laid on its side is another one.</summary>
    public const double SamePostureRad = Math.PI / 6;

    // Half a centimetre of 1.40 m: contacts nearer than that to one line carry the body as a line does.
    private const double LineH = .0035;

    private const int RoundsAtMost = 30;

    /// <summary>Whether every contact reaches the floor without making another posture of it.</summary>
    public bool IsTouching => GapH <= TouchingH && TurnedRad <= SamePostureRad;

    /// <summary>Puts a pose on the floor.</summary>
    /// <param name="pose">The angles, the pelvis turned roughly as it should be.</param>
    /// <param name="contacts">What should touch, shape (n), n ≥ 1, each once.</param>
    /// <returns>
    /// The pose turned as little as makes its contacts level (two: their line; three and more: their plane, by least squares) and
    /// lifted so that their mean height is 0. One contact turns nothing.
    /// </returns>
    /// <exception cref="ArgumentException">No contact; a paired part without its side.</exception>
    public static SettledBody Of(Pose pose, IReadOnlyList<Contact> contacts)
    {
        if (contacts.Count == 0) throw new ArgumentException("A posture touches the floor with at least one part.", nameof(contacts));
        foreach (var contact in contacts)
            if (SegmentFigures.IsPaired(ContactPatch.Of(contact.Part).Segment) != (contact.Side != Side.Middle))
                throw new ArgumentException($"{contact.Part} is given as {contact.Side}: a paired part is left or right, another is in the middle.", nameof(contacts));

        var start = Skeleton.Of(pose);
        Span<Point3> centres = contacts.Count <= 64 ? stackalloc Point3[contacts.Count] : new Point3[contacts.Count];
        for (var i = 0; i < centres.Length; i++) centres[i] = Centre(start, contacts[i]);
        Span<Point3> lowest = contacts.Count <= 64 ? stackalloc Point3[contacts.Count] : new Point3[contacts.Count];

        var turned = Rotation.None;
        Lowest(centres, contacts, turned, lowest);
        // A round part meets the floor elsewhere once the body has turned, so it takes a few rounds.
        for (var round = 0; round < RoundsAtMost && Levelling(lowest) is { } tilt; round++)
        {
            turned = tilt * turned;
            Lowest(centres, contacts, turned, lowest);
        }

        var middle = Middle(lowest);
        var skeleton = start.Moved(turned, new Point3(0, 0, 0) - middle);
        var settled = new SettledContact[contacts.Count];
        var gapH = 0.0;
        for (var i = 0; i < settled.Length; i++)
        {
            var patch = ContactPatch.Of(contacts[i].Part);
            var at = lowest[i] - middle;
            settled[i] = new SettledContact(contacts[i], at.OnFloor, patch.OutlineOnFloor(skeleton.Frame(patch.Segment, contacts[i].Side)), at.ZH);
            gapH = Math.Max(gapH, Math.Abs(at.ZH));
        }
        var traceCount = turned.X.XH + turned.Y.YH + turned.Z.ZH;
        return new SettledBody(skeleton, settled, gapH, Math.Acos(Math.Clamp((traceCount - 1) / 2, -1, 1)));
    }

    /// <summary>The same body elsewhere, not turned.</summary>
    /// <param name="by">How far, in statures.</param>
    internal SettledBody Moved(Point3 by) => this with
    {
        Skeleton = Skeleton.Moved(Rotation.None, by),
        Contacts = Contacts.Select(c => c with { Middle = c.Middle + by.OnFloor, Outline = c.Outline.Select(p => p + by.OnFloor).ToArray() }).ToArray(),
    };

    /// <summary>The point of a part that meets a floor straight below.</summary>
    internal static Point3 Lowest(Skeleton skeleton, Contact contact) =>
        Centre(skeleton, contact) - new Point3(0, 0, ContactPatch.Of(contact.Part).RadiusH);

    /// <summary>The middle of a part, inside the body.</summary>
    internal static Point3 Centre(Skeleton skeleton, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        return skeleton.Frame(patch.Segment, contact.Side).At(patch.Centre);
    }

    private static void Lowest(ReadOnlySpan<Point3> centres, IReadOnlyList<Contact> contacts, Rotation turned, Span<Point3> lowest)
    {
        for (var i = 0; i < centres.Length; i++)
            lowest[i] = turned.Of(centres[i]) - new Point3(0, 0, ContactPatch.Of(contacts[i].Part).RadiusH);
    }

    private static Point3 Middle(ReadOnlySpan<Point3> points)
    {
        var sum = new Point3(0, 0, 0);
        foreach (var point in points) sum += point;
        return 1.0 / points.Length * sum;
    }

    // The turn that makes the plane of least squares through the contacts level; none where it is already.
    private static Rotation? Levelling(ReadOnlySpan<Point3> lowest)
    {
        var middle = Middle(lowest);
        var (xx, xy, yy, xz, yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var point in lowest)
        {
            var p = point - middle;
            (xx, xy, yy) = (xx + p.XH * p.XH, xy + p.XH * p.YH, yy + p.YH * p.YH);
            (xz, yz) = (xz + p.XH * p.ZH, yz + p.YH * p.ZH);
        }
        // The two principal spreads of the contacts on the floor, the larger one along the line they lie on most.
        var (mean, half) = ((xx + yy) / 2, Math.Sqrt((xx - yy) * (xx - yy) / 4 + xy * xy));
        var (most, least) = (mean + half, mean - half);
        if (most < 1e-18) return null;
        var (front, left) = half < 1e-15 ? (1.0, 0.0) : Direction(xx, xy, yy, most);
        var (along, across) = (front * xz + left * yz, front * yz - left * xz);
        var alongSlope = along / most;
        // Contacts that lie on a line say nothing about a slope across it: the body is turned no more than it must.
        var acrossSlope = least > lowest.Length * LineH * LineH ? across / least : 0;
        var (frontSlope, leftSlope) = (alongSlope * front - acrossSlope * left, alongSlope * left + acrossSlope * front);
        var steepness = Math.Sqrt(frontSlope * frontSlope + leftSlope * leftSlope);
        if (steepness < 1e-10) return null;
        return Rotation.About(new(-leftSlope, frontSlope, 0), Math.Atan(steepness));
    }

    private static (double Front, double Left) Direction(double xx, double xy, double yy, double most)
    {
        // Either row of the matrix less its value gives the direction; the longer one is the safer.
        var (front, left) = xx > yy ? (most - yy, xy) : (xy, most - xx);
        var length = Math.Sqrt(front * front + left * left);
        return (front / length, left / length);
    }
}
