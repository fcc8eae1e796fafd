using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Engines.Tests.Mechanics.Postures;

public sealed class MechanicalOrderTests
{
    private static readonly Contact LeftFoot = new(ContactPart.Foot, Side.Left), RightFoot = new(ContactPart.Foot, Side.Right);
    private static readonly Contact LeftToes = new(ContactPart.Toes, Side.Left), RightToes = new(ContactPart.Toes, Side.Right);

    private static readonly Posture TwoFeet = new("two-feet", PostureGroup.Upright, Ahead(.045), [LeftFoot, RightFoot]);
    private static readonly Posture OneFoot = new("one-foot", PostureGroup.Upright, Ahead(.045).Placed(.045, -.085, 0), [LeftFoot]);
    private static readonly Posture Tiptoe = new("tiptoe", PostureGroup.Upright, Pose.Upright.Placed(.12, 0, 0).With(Joint.AnkleFlexion, Side.Middle, -.6), [LeftToes, RightToes]);

    [Fact]
    // Common practice, no source: two feet before tiptoe and one foot, in every progression a teacher writes.
    public void PlacesOf_TwoFeetAndLess_TwoFeetFirst()
    {
        var places = MechanicalOrder.PlacesOf([Tiptoe, TwoFeet, OneFoot]);
        Assert.Equal(1, places[1]);
        Assert.True(places[0] > 1 && places[2] > 1, string.Join(", ", places));
    }

    [Fact]
    public void PlacesOf_TheSamePostureTwice_ShareAPlace() => Assert.Equal([1, 1], MechanicalOrder.PlacesOf([TwoFeet, TwoFeet]));

    [Fact]
    public void PlacesOf_MirroredPostures_ShareAPlace()
    {
        var other = new Posture("other-foot", PostureGroup.Upright, OneFoot.Pose.Mirrored(), [RightFoot]);
        Assert.Equal([1, 1], MechanicalOrder.PlacesOf([OneFoot, other]));
    }

    [Fact]
    public void PlacesOf_TwoBodies_HaveNoPlace()
    {
        var pair = TwoFeet with { Partner = new Partner(Pose.Upright, [LeftFoot, RightFoot], [new(LeftFoot, RightFoot)]) };
        Assert.Equal([1, null], MechanicalOrder.PlacesOf([TwoFeet, pair]));
        Assert.Throws<ArgumentException>(() => MechanicalOrder.RoomOf(pair));
    }

    [Fact]
    public void PlacesOf_None_None() => Assert.Empty(MechanicalOrder.PlacesOf([]));

    private static Pose Ahead(double bowRad) => Pose.Upright.Placed(bowRad, 0, 0).With(Joint.AnkleFlexion, Side.Middle, bowRad);
}
