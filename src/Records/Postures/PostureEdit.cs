using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures;

/// <summary>Moves a part of a posture while what touches the floor, the wall or the other body stays.</summary>
/// <remarks>One is made at the beginning of a move and asked again and again while it goes on: the posture stays near to the one it began with.</remarks>
public sealed class PostureEdit
{
    private readonly SettledPosture _start;
    private readonly bool _isPartner;
    private readonly PlacedPose _near;
    // Flesh around the joints, as thick as the contact patches are round.
    private static readonly (SegmentKind Segment, Point3 Own, double RadiusH)[] Flesh =
    [
        (SegmentKind.Head, new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH - .060), .055), (SegmentKind.LowerTrunk, new(0, 0, 0), .055),
        (SegmentKind.UpperTrunk, new(0, 0, .060), .052), (SegmentKind.UpperArm, new(0, 0, 0), .030), (SegmentKind.Forearm, new(0, 0, 0), .018),
        (SegmentKind.Hand, new(0, 0, 0), .012), (SegmentKind.Hand, new(0, 0, -BodyLengths.HandH), .006), (SegmentKind.Shank, new(0, 0, 0), .030),
        (SegmentKind.Foot, new(0, 0, 0), .020), (SegmentKind.Foot, new(BodyLengths.FootH - BodyLengths.HeelBehindAnkleH, 0, -BodyLengths.AnkleHeightH + .012), .010),
    ];

    private readonly PoseGoal[] _above;
    private readonly (Contact? Floor, PoseGoal Place, PoseGoal? Turned)[] _kept;
    private PlacedPose _last;
    private PostureMove _held;

    private PostureEdit(SettledPosture start, bool isPartner)
    {
        (_start, _isPartner) = (start, isPartner);
        Body = isPartner ? start.Partner! : start.Body;
        _near = _last = PlacedPose.Of(isPartner ? start.Posture.Partner!.Pose : start.Posture.Pose, Body);
        _kept = [.. Body.Contacts.Select(c => ((Contact?)c.Contact, (PoseGoal)new PoseGoal.Placed(c.Contact, c.Middle), Turned(c))), .. Others()];
        _above = [.. Above()];
        _held = new PostureMove(start, new(0, 0), [], true);
    }

    /// <summary>The body that is changed, as the move began.</summary>
    public SettledBody Body { get; }

    /// <summary>The beginning of a move.</summary>
    /// <param name="start">A posture that touches.</param>
    /// <param name="isPartner">Whether the second body is changed.</param>
    /// <exception cref="ArgumentException">The second body of a posture of one.</exception>
    public static PostureEdit Of(SettledPosture start, bool isPartner = false) => isPartner && start.Partner is null
        ? throw new ArgumentException("A posture of one has no second body.", nameof(isPartner))
        : new PostureEdit(start, isPartner);

    /// <summary>The posture with wishes met as far as joints and contacts allow.</summary>
    /// <param name="wishes">What is wanted, at least one, in the frame of the floor on which the move began.</param>
    /// <param name="sliding">Contacts that keep to the floor but may leave their place on it.</param>
    /// <exception cref="ArgumentException">No wish.</exception>
    public PostureMove Follow(IReadOnlyList<PoseGoal> wishes, IReadOnlyList<Contact> sliding)
    {
        var found = PoseFollow.Fit(_last, _near, Kept(sliding), wishes);
        var posture = _isPartner
            ? _start.Posture with { Partner = _start.Posture.Partner! with { Pose = found.Placed.Pose } }
            : _start.Posture with { Pose = found.Placed.Pose };
        var settled = posture.Settle();
        var isMet = found.MissedH <= PoseFollow.MetH;
        if (!settled.IsTouching) return _held = _held with { Stops = found.Stops, IsMet = false };
        _last = found.Placed;
        return _held = new PostureMove(settled, Shift(settled, found.Placed), found.Stops, isMet);
    }

    // The floor's origin is below the middle of the first body's contacts: it goes along when one of them moves.
    private Point2 Shift(SettledPosture settled, PlacedPose placed)
    {
        if (_isPartner) return new(0, 0);
        var contact = settled.Body.Contacts[0];
        var patch = ContactPatch.Of(contact.Contact.Part);
        return patch.Lowest(placed.Skeleton().Frame(patch.Segment, contact.Contact.Side)).OnFloor - contact.Middle;
    }

    private List<PoseGoal> Kept(IReadOnlyList<Contact> sliding)
    {
        var kept = new List<PoseGoal>(_above);
        foreach (var (floor, place, turned) in _kept)
        {
            var isSliding = floor is { } contact && sliding.Contains(contact);
            kept.Add(isSliding ? new PoseGoal.OnFloor(floor!.Value) : place);
            // A hand that is put elsewhere lies flat there and points where the arm lets it.
            if (isSliding && turned is PoseGoal.Turned) kept.Add(new PoseGoal.Flat(floor!.Value));
            else if (turned is not null) kept.Add(turned);
        }
        return kept;
    }

    // A palm keeps lying as it does, a long print its direction; a round part may roll. A sole may too, to its sides: the skeleton's
    // ankle has no joint for it, and without it no stance could be widened.
    private PoseGoal? Turned(SettledContact settled)
    {
        var patch = ContactPatch.Of(settled.Contact.Part);
        var turned = Body.Skeleton.Frame(patch.Segment, settled.Contact.Side).Turned;
        if (patch.Part is ContactPart.Hand) return new PoseGoal.Turned(settled.Contact, turned);
        var along = turned.Of(patch.Heading).OnFloor;
        return patch.Segment is SegmentKind.Foot or SegmentKind.Hand or SegmentKind.Forearm or SegmentKind.Shank && along.LengthH > .3
            ? new PoseGoal.Along(settled.Contact, along)
            : null;
    }

    // What meets the wall or the other body stays where it is. A body that carries takes the other along instead.
    private IEnumerable<(Contact? Floor, PoseGoal Place, PoseGoal? Turned)> Others()
    {
        var held = _start.Posture switch
        {
            { Partner: { } partner } when _isPartner => partner.Joins.Select(j => j.Own),
            { Partner: { IsCarried: false } partner } => partner.Joins.Select(j => j.On),
            var posture => posture.Wall,
        };
        return held.Distinct().Select(c => ((Contact?)null, (PoseGoal)new PoseGoal.Held(c, Middle(c)), (PoseGoal?)null));
    }

    private IEnumerable<PoseGoal> Above() =>
        from flesh in Flesh
        from side in SegmentFigures.IsPaired(flesh.Segment) ? new[] { Side.Left, Side.Right } : [Side.Middle]
        let startH = Body.Skeleton.Frame(flesh.Segment, side).At(flesh.Own).ZH
        select new PoseGoal.Above(flesh.Segment, side, flesh.Own, Math.Min(flesh.RadiusH, startH));

    private Point3 Middle(Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        return Body.Skeleton.Frame(patch.Segment, contact.Side).At(patch.Centre);
    }
}
