using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>A place of the figure that can be dragged.</summary>
/// <param name="Id">Its name in the page, such as <c>0-hand-left</c>.</param>
/// <param name="IsPartner">Whether it is on the second body.</param>
/// <param name="Segment">The segment it sits on.</param>
/// <param name="Side">The segment's side.</param>
/// <param name="Own">Where, in the segment's own axes.</param>
/// <param name="Contact">What touches the floor there; none for a joint in the air.</param>
public sealed record StudioHandle(string Id, bool IsPartner, SegmentKind Segment, Side Side, Point3 Own, Contact? Contact)
{
    /// <summary>The handles of a body: its joints and its contacts, a joint that touches shown once, as a contact.</summary>
    /// <param name="body">On the floor, or carried.</param>
    /// <param name="isPartner">Whether it is the second body.</param>
    public static IReadOnlyList<StudioHandle> Of(SettledBody body, bool isPartner)
    {
        var handles = new List<StudioHandle>();
        foreach (var (segment, own) in Joints)
            foreach (var side in SegmentFigures.IsPaired(segment) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                if (!body.Contacts.Any(c => c.Contact.Side == side && Covers(c.Contact.Part, segment)))
                    handles.Add(new(Name(isPartner, segment.ToString(), side), isPartner, segment, side, own, null));
        foreach (var contact in body.Contacts)
        {
            var patch = ContactPatch.Of(contact.Contact.Part);
            handles.Add(new(Name(isPartner, "on-" + patch.Part, contact.Contact.Side), isPartner, patch.Segment, contact.Contact.Side, patch.Centre, contact.Contact));
        }
        return handles;
    }

    /// <summary>Where the handle is, in the floor's frame; a contact's lies on the floor.</summary>
    /// <param name="body">The body it sits on.</param>
    public Point3 At(SettledBody body)
    {
        var at = body.Skeleton.Frame(Segment, Side).At(Own);
        return Contact is null ? at : at with { ZH = 0 };
    }

    private static readonly (SegmentKind Segment, Point3 Own)[] Joints =
    [
        (SegmentKind.Head, new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH / 2)), (SegmentKind.UpperArm, new(0, 0, 0)), (SegmentKind.Forearm, new(0, 0, 0)),
        (SegmentKind.Hand, new(0, 0, 0)), (SegmentKind.LowerTrunk, new(0, 0, 0)), (SegmentKind.Shank, new(0, 0, 0)), (SegmentKind.Foot, new(0, 0, 0)),
    ];

    private static bool Covers(ContactPart part, SegmentKind joint) => part switch
    {
        ContactPart.Hand => joint == SegmentKind.Hand,
        ContactPart.Foot or ContactPart.Heel or ContactPart.Instep => joint == SegmentKind.Foot,
        ContactPart.Forearm => joint is SegmentKind.Forearm or SegmentKind.Hand,
        ContactPart.Elbow => joint == SegmentKind.Forearm,
        ContactPart.Knee => joint == SegmentKind.Shank,
        ContactPart.Shank => joint is SegmentKind.Shank or SegmentKind.Foot,
        ContactPart.Crown or ContactPart.Forehead => joint == SegmentKind.Head,
        ContactPart.Seat => joint == SegmentKind.LowerTrunk,
        ContactPart.Shoulder => joint == SegmentKind.UpperArm,
        _ => false,
    };

    private static string Name(bool isPartner, string what, Side side) => $"{(isPartner ? 1 : 0)}-{what}-{side}".ToLowerInvariant();
}
