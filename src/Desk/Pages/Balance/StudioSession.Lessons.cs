using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

// The lesson's buttons: what a teacher does with the base in front of a class, a step at a time.
public sealed partial class StudioSession
{
    private const double SpreadStepH = .03;
    private const double LineStepFraction = .34;
    private static readonly ContactPart[] HandParts = [ContactPart.Hand, ContactPart.Fingertips, ContactPart.Forearm, ContactPart.Elbow];
    private static readonly ContactPart[] FootParts = [ContactPart.Foot, ContactPart.Toes, ContactPart.Heel, ContactPart.Instep, ContactPart.Knee, ContactPart.Shank];

    /// <summary>Whether two hands or arms carry.</summary>
    public bool HasHands => Pair(HandParts) is not null;

    /// <summary>Whether two feet or knees carry.</summary>
    public bool HasFeet => Pair(FootParts) is not null;

    /// <summary>Whether a head and two hands carry: three points whose shape can be changed.</summary>
    public bool HasHeadAndHands => HasHands && Head is not null;

    /// <summary>Both hands away from each other, or towards each other, by a step of 3 hundredths of a stature each.</summary>
    /// <param name="isWider">Away from each other.</param>
    public void SpreadHands(bool isWider) => Spread(HandParts, isWider);

    /// <summary>Both feet away from each other, or towards each other.</summary>
    /// <param name="isWider">Away from each other.</param>
    public void SpreadFeet(bool isWider) => Spread(FootParts, isWider);

    /// <summary>The head a third of the way towards the line between the hands: pressed again and again, the triangle collapses.</summary>
    public void HeadTowardsLine()
    {
        if (Pair(HandParts) is not { } hands || Head is not { } head) return;
        var (left, right, at) = (hands.Left.Middle, hands.Right.Middle, head.Middle);
        var along = right - left;
        var atFraction = ((at - left).XH * along.XH + (at - left).YH * along.YH) / (along.LengthH * along.LengthH);
        var onLine = left + atFraction * along;
        SetPlace(false, head.Contact, at + LineStepFraction * (onLine - at));
    }

    private SettledContact? Head => Settled.Body.Contacts.FirstOrDefault(c => ContactPatch.IsHead(c.Contact.Part));

    private void Spread(ContactPart[] parts, bool isWider)
    {
        if (Pair(parts) is not { } pair) return;
        var (left, right) = (pair.Left, pair.Right);
        var apart = left.Middle - right.Middle;
        var stepH = isWider ? SpreadStepH : -Math.Min(SpreadStepH, Math.Max(0, (apart.LengthH - .06) / 2));
        var by = stepH / apart.LengthH * apart;
        Change(false, _ => ([new PoseGoal.Placed(left.Contact, left.Middle + by), new PoseGoal.Placed(right.Contact, right.Middle - by)], [left.Contact, right.Contact]));
    }

    private (SettledContact Left, SettledContact Right)? Pair(ContactPart[] parts)
    {
        foreach (var part in parts)
            if (Of(part, Side.Left) is { } left && Of(part, Side.Right) is { } right && (left.Middle - right.Middle).LengthH > 1e-6) return (left, right);
        return null;
    }

    private SettledContact? Of(ContactPart part, Side side) => Settled.Body.Contacts.FirstOrDefault(c => c.Contact == new Contact(part, side));
}
