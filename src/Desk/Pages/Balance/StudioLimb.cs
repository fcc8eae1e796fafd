using Slantwise.Engines.Mechanics;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>A group of joints in the list.</summary>
/// <param name="Key">The end of its name in the words.</param>
/// <param name="Side">Which side of the body.</param>
/// <param name="Joints">In the order from the trunk outwards.</param>
public sealed record StudioLimb(string Key, Side Side, IReadOnlyList<Joint> Joints)
{
    private static readonly Joint[] Arm = [Joint.ShoulderFlexion, Joint.ShoulderAbduction, Joint.ShoulderRotation, Joint.ElbowFlexion, Joint.ForearmPronation, Joint.WristExtension];
    private static readonly Joint[] Leg = [Joint.HipFlexion, Joint.HipAbduction, Joint.HipRotation, Joint.KneeFlexion, Joint.AnkleFlexion];

    /// <summary>The five groups.</summary>
    public static IReadOnlyList<StudioLimb> All { get; } =
    [
        new("Middle", Side.Middle, [Joint.SpineFlexion, Joint.SpineLean, Joint.SpineTwist, Joint.NeckFlexion, Joint.NeckLean, Joint.NeckTurn]),
        new("ArmLeft", Side.Left, Arm), new("ArmRight", Side.Right, Arm), new("LegLeft", Side.Left, Leg), new("LegRight", Side.Right, Leg),
    ];
}
