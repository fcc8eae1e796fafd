namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>Something that touches the floor, as far as the view shows it: from one end to the other along the floor.</summary>
/// <param name="Part">The part of the body.</param>
/// <param name="Side">Left or right for a paired part; Middle for an unpaired one, or where one mark stands for both.</param>
/// <param name="Ends">Two ends in any order, or one in its middle: then its size is taken from <see cref="ContactPatch"/>.</param>
public sealed record MarkedContact(ContactPart Part, Side Side, IReadOnlyList<ContactEnd> Ends)
{
    /// <summary>The points of the body that are the ends of a part, so that they need not be marked twice.</summary>
    /// <param name="part">The part.</param>
    /// <returns>Two points, one, or none where the part has to be marked for itself.</returns>
    public static IReadOnlyList<Landmark> EndsOf(ContactPart part) => part switch
    {
        ContactPart.Foot => [Landmark.Heel, Landmark.Toe],
        ContactPart.Heel => [Landmark.Heel],
        ContactPart.Instep => [Landmark.Ankle, Landmark.Toe],
        ContactPart.Hand => [Landmark.Wrist, Landmark.Fingertip],
        ContactPart.Fingertips => [Landmark.Fingertip],
        ContactPart.Forearm => [Landmark.Elbow, Landmark.Wrist],
        ContactPart.Elbow => [Landmark.Elbow],
        ContactPart.Knee => [Landmark.Knee],
        ContactPart.Shank => [Landmark.Knee, Landmark.Ankle],
        ContactPart.Crown => [Landmark.Crown],
        _ => [],
    };

    // A joint's middle is above the floor by the flesh below it; heel, toe, fingertip and crown lie on it.
    internal static bool IsOnFloor(Landmark landmark) =>
        landmark is Landmark.Heel or Landmark.Toe or Landmark.Fingertip or Landmark.Crown;
}
