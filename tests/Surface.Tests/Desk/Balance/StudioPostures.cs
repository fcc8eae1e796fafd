using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Surface.Tests.Desk.Balance;

/// <summary>Postures of these tests' own, so that a change of the library does not change what they say.</summary>
internal static class StudioPostures
{
    public static readonly Contact LeftHand = new(ContactPart.Hand, Side.Left), RightHand = new(ContactPart.Hand, Side.Right);
    public static readonly Contact LeftFoot = new(ContactPart.Foot, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right);
    public static readonly Contact Crown = new(ContactPart.Crown, Side.Middle);

    public static Posture Standing { get; } = new("standing", PostureGroup.Upright,
        Pose.Upright.With(Joint.HipAbduction, Side.Middle, .07).With(Joint.ShoulderAbduction, Side.Middle, .14).With(Joint.ElbowFlexion, Side.Middle, .2),
        [LeftFoot, RightFoot]);

    public static Posture Tripod { get; } = FoundTripod();

    private static Posture FoundTripod()
    {
        static double Rad(double deg) => deg * Math.PI / 180;
        var guess = Pose.Upright.Placed(Rad(150), 0, 0)
            .With(Joint.ShoulderFlexion, Side.Middle, Rad(60)).With(Joint.ElbowFlexion, Side.Middle, Rad(110))
            .With(Joint.HipFlexion, Side.Middle, Rad(100)).With(Joint.KneeFlexion, Side.Middle, Rad(120))
            .With(Joint.ForearmPronation, Side.Middle, Rad(80)).With(Joint.WristExtension, Side.Middle, Rad(80));
        var found = PoseSearch.Fit(guess, [
            new PoseGoal.OnFloor(LeftHand), new PoseGoal.OnFloor(RightHand), new PoseGoal.OnFloor(Crown),
            new PoseGoal.Flat(LeftHand), new PoseGoal.Flat(RightHand), new PoseGoal.Apart(LeftHand, RightHand, new Point2(0, .30)),
            new PoseGoal.Apart(Crown, RightHand, new Point2(-.22, .15)),
            new PoseGoal.CentreOver(RightHand, new Point2(-.07, .15)),
        ]);
        return new Posture("tripod", PostureGroup.Inverted, found.Pose, [LeftHand, RightHand, Crown]);
    }
}
