using Slantwise.Engines.Mechanics;
using Slantwise.Records.Postures;

namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>What a level's picture rests on.</summary>
internal static class LadderSupports
{
    /// <summary>The parts that touch the floor in a posture, each once; empty for none or a posture the library does not have.</summary>
    public static IReadOnlyList<SupportPart> Of(string? posture) => posture is not null && PostureLibrary.Find(posture) is { } shown
        ? [.. shown.Settle().Bodies.SelectMany(b => b.Contacts).Select(c => Of(c.Contact.Part)).Distinct().Order()]
        : [];

    private static SupportPart Of(ContactPart part) => part switch
    {
        ContactPart.Foot or ContactPart.Toes or ContactPart.Heel or ContactPart.Instep => SupportPart.Foot,
        ContactPart.Hand or ContactPart.Fingertips => SupportPart.Hand,
        ContactPart.Forearm or ContactPart.Elbow => SupportPart.Forearm,
        ContactPart.Knee or ContactPart.Shank => SupportPart.Knee,
        ContactPart.Seat => SupportPart.Seat,
        ContactPart.UpperBack or ContactPart.Shoulder => SupportPart.Shoulder,
        ContactPart.LowerBack => SupportPart.Back,
        ContactPart.Crown or ContactPart.Forehead => SupportPart.Head,
        ContactPart.Hip => SupportPart.Side,
        _ => SupportPart.Front,
    };
}
