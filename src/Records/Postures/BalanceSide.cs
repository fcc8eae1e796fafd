using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures;

/// <summary>A side of the base as a teacher would point at it: between which prints it runs and which way it looks.</summary>
/// <param name="First">The print in which the side begins.</param>
/// <param name="Second">The print in which it ends; the same one where the side lies along a single print.</param>
/// <param name="End">Which end of the prints it runs along.</param>
/// <param name="Towards">Which way it looks for the performer; none where no body is given.</param>
/// <param name="IsInverted">Whether the performer's hips are above the shoulders.</param>
/// <param name="IsCorner">Whether it is only the rounded corner of one print.</param>
public sealed record BalanceSide(Contact First, Contact Second, PrintEnd End, BodyDirection? Towards, bool IsInverted, bool IsCorner = false)
{
    // An end is meant where the side looks along the print to within about 50°.
    private const double AlongFraction = .64;

    /// <summary>The prints that a side of the base belongs to.</summary>
    /// <param name="edge">A side of the base of these contacts.</param>
    /// <param name="contacts">All contacts on the floor, 1 or more, in the edge's frame.</param>
    /// <param name="trunk">The middle of the performer's trunk; none where it is not known.</param>
    /// <exception cref="ArgumentException">No contact.</exception>
    public static BalanceSide Of(TippingEdge edge, IReadOnlyList<SettledContact> contacts, SegmentFrame? trunk)
    {
        if (contacts.Count == 0) throw new ArgumentException("A side of a base lies along at least one contact.", nameof(contacts));
        var along = edge.To - edge.From;
        var outward = along.LengthH < 1e-12 ? new Point2(1, 0) : 1 / along.LengthH * new Point2(along.YH, -along.XH);
        var (first, second) = (Nearest(edge.From, contacts), Nearest(edge.To, contacts));
        var (firstEnd, secondEnd) = (EndOf(first, outward), EndOf(second, outward));
        return new BalanceSide(first.Contact, second.Contact, firstEnd == secondEnd ? firstEnd : PrintEnd.Side,
            trunk is { } t ? Direction(t, outward) : null, trunk is { Turned.Z.ZH: < -.5 }, ReferenceEquals(first, second) && IsCornerOf(first.Outline, edge));
    }

    // An outline has eight points, its corners cut between the first and the second, the third and the fourth, and so on.
    private static bool IsCornerOf(IReadOnlyList<Point2> outline, TippingEdge edge)
    {
        if (outline.Count != 8) return false;
        for (var i = 0; i < 8; i += 2)
            if ((outline[i] == edge.From && outline[i + 1] == edge.To) || (outline[i + 1] == edge.From && outline[i] == edge.To)) return true;
        return false;
    }

    private static SettledContact Nearest(Point2 corner, IReadOnlyList<SettledContact> contacts) =>
        contacts.MinBy(c => c.Outline.Append(c.Middle).Min(p => (p - corner).LengthH))!;

    // The first half of an outline's points lies where the print points to: see ContactPatch.
    private static PrintEnd EndOf(SettledContact contact, Point2 outward)
    {
        var outline = contact.Outline;
        if (outline.Count != 8) return PrintEnd.Side;
        var heading = .5 * (outline[0] + outline[7]) - .5 * (outline[3] + outline[4]);
        if (heading.LengthH < 1e-12) return PrintEnd.Side;
        var lookFraction = (heading.XH * outward.XH + heading.YH * outward.YH) / heading.LengthH;
        return lookFraction > AlongFraction ? PrintEnd.Front : lookFraction < -AlongFraction ? PrintEnd.Back : PrintEnd.Side;
    }

    /// <summary>A level direction as the performer has it.</summary>
    /// <param name="trunk">The middle of the performer's trunk.</param>
    /// <param name="outward">The direction, of length 1.</param>
    public static BodyDirection Direction(SegmentFrame trunk, Point2 outward)
    {
        double On(Point3 axis) => axis.XH * outward.XH + axis.YH * outward.YH;
        var (frontFraction, leftFraction, headFraction) = (On(trunk.Turned.X), On(trunk.Turned.Y), On(trunk.Turned.Z));
        if (Math.Abs(leftFraction) >= Math.Max(Math.Abs(frontFraction), Math.Abs(headFraction)))
            return leftFraction >= 0 ? BodyDirection.Left : BodyDirection.Right;
        return Math.Abs(frontFraction) >= Math.Abs(headFraction)
            ? frontFraction >= 0 ? BodyDirection.Front : BodyDirection.Back
            : headFraction >= 0 ? BodyDirection.Headwards : BodyDirection.Footwards;
    }
}
