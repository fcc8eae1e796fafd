using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>Something that may touch the floor.</summary>
/// <param name="Part">The part.</param>
/// <param name="Side">Left is the limb nearer to the first camera, right the farther one; Middle for both together and for what is in the middle.</param>
public readonly record struct PhotoTouch(ContactPart Part, Side Side)
{
    /// <summary>What is asked about first; the others are in a list of their own.</summary>
    public static IReadOnlyList<ContactPart> Usual { get; } =
        [ContactPart.Foot, ContactPart.Toes, ContactPart.Hand, ContactPart.Crown, ContactPart.Knee, ContactPart.Seat];

    /// <summary>The parts that are seldom asked about.</summary>
    public static IReadOnlyList<ContactPart> Others { get; } = [.. Enum.GetValues<ContactPart>().Except(Usual)];

    /// <summary>Whether the part belongs to an arm.</summary>
    public static bool IsOfArm(ContactPart part) =>
        part is ContactPart.Hand or ContactPart.Fingertips or ContactPart.Forearm or ContactPart.Elbow or ContactPart.Shoulder;

    /// <summary>Whether the part belongs to a leg.</summary>
    public static bool IsOfLeg(ContactPart part) => SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) && !IsOfArm(part);
}
