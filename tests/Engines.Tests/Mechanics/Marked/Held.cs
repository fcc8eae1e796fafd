using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

/// <summary>A few postures of our own, upright and upside down.</summary>
internal static class Held
{
    private static readonly Contact[] Feet = [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)];
    private static readonly Contact[] Hands = [new(ContactPart.Hand, Side.Left), new(ContactPart.Hand, Side.Right)];

    public static SettledBody Of(string name) => name switch
    {
        "standing" => SettledBody.Of(Pose.Upright, Feet),
        // Arms wide and one forward: left and right differ.
        "stork" => SettledBody.Of(
            Bent(Pose.Upright, (Joint.HipFlexion, Side.Right, 90), (Joint.KneeFlexion, Side.Right, 80), (Joint.ShoulderFlexion, Side.Left, 90), (Joint.ShoulderFlexion, Side.Right, -30)),
            [new(ContactPart.Foot, Side.Left)]),
        "squat" => SettledBody.Of(
            Bent(Pose.Upright.Placed(Rad(35), 0, 0), (Joint.HipFlexion, Side.Middle, 120), (Joint.KneeFlexion, Side.Middle, 110), (Joint.AnkleFlexion, Side.Middle, 25), (Joint.ShoulderFlexion, Side.Middle, 110)),
            Feet),
        "support" => SettledBody.Of(Bent(Pose.Upright.Placed(Rad(72), 0, 0), (Joint.ShoulderFlexion, Side.Middle, 72), (Joint.WristExtension, Side.Middle, 0), (Joint.AnkleFlexion, Side.Middle, 0)),
            [.. Hands, new(ContactPart.Toes, Side.Left), new(ContactPart.Toes, Side.Right)]),
        "handstand" => SettledBody.Of(
            Bent(Pose.Upright.Placed(Math.PI, 0, 0), (Joint.ShoulderFlexion, Side.Middle, 175), (Joint.AnkleFlexion, Side.Middle, -40), (Joint.ForearmPronation, Side.Middle, 90), (Joint.WristExtension, Side.Middle, 85)),
            Hands),
        "tuck headstand" => SettledBody.Of(
            Bent(Pose.Upright.Placed(Rad(175), 0, 0), (Joint.HipFlexion, Side.Middle, 120), (Joint.KneeFlexion, Side.Middle, 130), (Joint.ShoulderFlexion, Side.Middle, 70), (Joint.ElbowFlexion, Side.Middle, 80)),
            [new(ContactPart.Crown, Side.Middle), .. Hands]),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such posture."),
    };

    private static double Rad(double deg) => deg * Math.PI / 180;

    private static Pose Bent(Pose pose, params (Joint Joint, Side Side, double Deg)[] bends) =>
        bends.Aggregate(pose, (bent, b) => bent.With(b.Joint, b.Side, Rad(b.Deg)));
}
