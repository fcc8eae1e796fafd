using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class LandmarkPlaceTests
{
    [Theory]
    // By hand: heights of [DrillisContini1966] for upright standing, arms hanging, seen from the middle of the hips at .530.
    [InlineData(Landmark.Crown, 0, 1)]
    [InlineData(Landmark.Shoulder, 0, .818)]
    [InlineData(Landmark.Elbow, 0, .632)]
    [InlineData(Landmark.Wrist, 0, .486)]
    [InlineData(Landmark.Fingertip, 0, .378)]
    [InlineData(Landmark.Hip, 0, .530)]
    [InlineData(Landmark.Knee, 0, .285)]
    [InlineData(Landmark.Ankle, 0, .039)]
    [InlineData(Landmark.Heel, -.038, 0)]
    [InlineData(Landmark.Toe, .114, 0)]
    public void Of_Standing_AtTheTablesHeight(Landmark landmark, double frontH, double upH)
    {
        var at = LandmarkPlace.Of(Skeleton.Of(Pose.Upright), landmark, Side.Left);
        Assert.Equal(frontH, at.XH, 1e-9);
        Assert.Equal(upH, at.ZH + .530, 1e-9);
    }
}
