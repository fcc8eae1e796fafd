using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>A posture as in a mirror: left for right, in angles and in contacts.</summary>
public static class StudioMirror
{
    /// <summary>The mirrored posture.</summary>
    /// <param name="posture">Of one body or two.</param>
    public static Posture Of(Posture posture) => posture with
    {
        Pose = posture.Pose.Mirrored(),
        Contacts = [.. posture.Contacts.Select(Of)],
        Wall = [.. posture.Wall.Select(Of)],
        Partner = posture.Partner is not { } partner ? null : new Partner(
            partner.Pose.Mirrored(), [.. partner.Contacts.Select(Of)], [.. partner.Joins.Select(j => new Join(Of(j.Own), Of(j.On)))]),
    };

    private static Contact Of(Contact contact) => contact with
    {
        Side = contact.Side switch { Side.Left => Side.Right, Side.Right => Side.Left, _ => Side.Middle },
    };
}
