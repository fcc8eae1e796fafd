namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>A posture put on the floor, the partner on or beside the first body.</summary>
/// <param name="Posture">What was settled.</param>
/// <param name="Body">The first body; it faces the front (+X) unless its turn says otherwise.</param>
/// <param name="Partner">The second one, in the same frame; none for a posture of one.</param>
/// <param name="JoinGapH">The largest distance by which two parts that should meet miss each other, in statures; 0 for one body.</param>
public sealed record SettledPosture(Posture Posture, SettledBody Body, SettledBody? Partner, double JoinGapH)
{
    // A grip gives: hands close around each other, a foot finds its place on a thigh.
    /// <summary>The largest distance at which two bodies still hold each other, in statures: about 4 cm of 1.40 m.</summary>
    public const double JoinedH = .030;

    /// <summary>Both bodies, or the one.</summary>
    public IReadOnlyList<SettledBody> Bodies => Partner is null ? [Body] : [Body, Partner];

    /// <summary>Whether every contact reaches the floor and every join its place.</summary>
    public bool IsTouching => Bodies.All(b => b.IsTouching) && JoinGapH <= JoinedH;

    /// <summary>By how much it fails to touch: the largest of all gaps, in statures.</summary>
    public double GapH => Math.Max(JoinGapH, Bodies.Max(b => b.GapH));

    /// <summary>Whether the hips of a body are higher than its head.</summary>
    public bool IsInverted => Bodies.Any(Posture.IsInverted);

    /// <summary>Which way the wall is, a vector of length 1 on the floor; none without a wall.</summary>
    public Point2? TowardsWall
    {
        get
        {
            if (Posture.Wall.Count == 0) return null;
            var wall = 1.0 / Posture.Wall.Count * Posture.Wall.Aggregate(new Point2(0, 0), (sum, c) => sum + SettledBody.Lowest(Body.Skeleton, c).OnFloor);
            var floor = 1.0 / Body.Contacts.Count * Body.Contacts.Aggregate(new Point2(0, 0), (sum, c) => sum + c.Middle);
            var towards = wall - floor;
            return towards.LengthH < 1e-9 ? new Point2(1, 0) : 1 / towards.LengthH * towards;
        }
    }

    /// <summary>Puts a posture on the floor.</summary>
    /// <param name="posture">Its poses turned roughly as they should be.</param>
    /// <returns>
    /// The first body as <see cref="SettledBody.Of"/> puts it. A partner with contacts of its own is put on the floor likewise and then
    /// moved along it, one who is carried is moved freely, so that the joins miss each other least (least squares); neither is turned for it.
    /// </returns>
    /// <exception cref="ArgumentException">No contact; a paired part without its side; a partner without a join.</exception>
    public static SettledPosture Of(Posture posture)
    {
        var body = SettledBody.Of(posture.Pose, posture.Contacts);
        if (posture.Partner is not { } partner) return new SettledPosture(posture, body, null, 0);
        if (partner.Joins.Count == 0) throw new ArgumentException("A partner meets the other body with at least one part.", nameof(posture));

        var own = partner.IsCarried ? new SettledBody(Skeleton.Of(partner.Pose), [], 0, 0) : SettledBody.Of(partner.Pose, partner.Contacts);
        var miss = 1.0 / partner.Joins.Count * partner.Joins.Aggregate(new Point3(0, 0, 0), (sum, join) => sum + Meeting(body, own, join));
        if (!partner.IsCarried) miss = miss with { ZH = 0 };
        own = own.Moved(miss);
        return new SettledPosture(posture, body, own, partner.Joins.Max(join => Math.Max(0, Apart(body, own, join))));
    }

    // How the partner's part has to move to rest on the other's: on top of it when carried by it, flesh against flesh.
    private static Point3 Meeting(SettledBody body, SettledBody partner, Join join)
    {
        var (on, own) = (Centre(body, join.On), Centre(partner, join.Own));
        var away = own - on;
        var touchingH = ContactPatch.Of(join.On.Part).RadiusH + ContactPatch.Of(join.Own.Part).RadiusH;
        if (partner.Contacts.Count == 0) return on + new Point3(0, 0, touchingH) - own;
        // Two who lean back to back meet behind each other, wherever they were put first.
        if (join.On.Part is ContactPart.UpperBack or ContactPart.LowerBack) return on - touchingH * Front(body, join.On) - own;
        return away.LengthH < 1e-9 ? new Point3(0, 0, 0) : (touchingH / away.LengthH - 1) * away;
    }

    private static Point3 Front(SettledBody body, Contact contact) => body.Skeleton.Frame(ContactPatch.Of(contact.Part).Segment, contact.Side).Turned.X;

    private static double Apart(SettledBody body, SettledBody partner, Join join) =>
        (Centre(body, join.On) - Centre(partner, join.Own)).LengthH - ContactPatch.Of(join.On.Part).RadiusH - ContactPatch.Of(join.Own.Part).RadiusH;

    internal static Point3 Centre(SettledBody body, Contact contact) => SettledBody.Centre(body.Skeleton, contact);
}
