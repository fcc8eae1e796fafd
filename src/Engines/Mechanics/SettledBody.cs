using MathNet.Numerics.LinearAlgebra;

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
        var (turned, skeleton) = (Rotation.None, start);
        var lowest = Lowest(skeleton, contacts);
        for (var round = 0; round < RoundsAtMost; round++)
        {
            var tilt = Levelling(lowest);
            if (tilt is null) break;
            turned = tilt.Value * turned;
            // A round part meets the floor elsewhere once the body has turned, so it takes a few rounds.
            skeleton = start.Moved(turned, new(0, 0, 0));
            lowest = Lowest(skeleton, contacts);
        }

        var middle = 1.0 / lowest.Length * lowest.Aggregate((a, b) => a + b);
        skeleton = skeleton.Moved(Rotation.None, new Point3(0, 0, 0) - middle);
        var settled = contacts.Select(c => Settled(skeleton, c)).ToArray();
        var traceCount = turned.X.XH + turned.Y.YH + turned.Z.ZH;
        return new SettledBody(skeleton, settled, settled.Max(c => Math.Abs(c.HeightH)), Math.Acos(Math.Clamp((traceCount - 1) / 2, -1, 1)));
    }

    /// <summary>The same body elsewhere, not turned.</summary>
    /// <param name="by">How far, in statures.</param>
    internal SettledBody Moved(Point3 by) => this with
    {
        Skeleton = Skeleton.Moved(Rotation.None, by),
        Contacts = Contacts.Select(c => c with { Middle = c.Middle + by.OnFloor, Outline = c.Outline.Select(p => p + by.OnFloor).ToArray() }).ToArray(),
    };

    internal static Point3 Lowest(Skeleton skeleton, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        return patch.Lowest(skeleton.Frame(patch.Segment, contact.Side));
    }

    private static SettledContact Settled(Skeleton skeleton, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        var frame = skeleton.Frame(patch.Segment, contact.Side);
        var lowest = patch.Lowest(frame);
        return new SettledContact(contact, lowest.OnFloor, patch.OutlineOnFloor(frame), lowest.ZH);
    }

    private static Point3[] Lowest(Skeleton skeleton, IReadOnlyList<Contact> contacts)
    {
        var lowest = new Point3[contacts.Count];
        for (var i = 0; i < lowest.Length; i++) lowest[i] = Lowest(skeleton, contacts[i]);
        return lowest;
    }

    // The turn that makes the plane of least squares through the contacts level; none where it is already.
    private static Rotation? Levelling(Point3[] lowest)
    {
        if (lowest.Length == 1) return null;
        var middle = 1.0 / lowest.Length * lowest.Aggregate((a, b) => a + b);
        var plane = Matrix<double>.Build.Dense(lowest.Length, 2, (row, column) => column == 0 ? lowest[row].XH - middle.XH : lowest[row].YH - middle.YH);
        var heights = Vector<double>.Build.Dense(lowest.Length, row => lowest[row].ZH - middle.ZH);
        // The pseudo-inverse gives the flattest plane where the contacts lie on one line: it turns the body no more than it must.
        var slope = plane.PseudoInverse() * heights;
        var steepness = Math.Sqrt(slope[0] * slope[0] + slope[1] * slope[1]);
        if (steepness < 1e-10) return null;
        return Rotation.About(new(-slope[1], slope[0], 0), Math.Atan(steepness));
    }
}
