using Slantwise.Engines.Mechanics;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Records.Tests.Postures;

public sealed class PostureHeightTests
{
    // By hand: who stands is one stature high, with less than two hundredths for a drawn head; who lies on the forearms about three tenths.
    [Theory]
    [InlineData("two-feet", 1, 0.02)]
    [InlineData("stork", 1, 0.02)]
    [InlineData("forearm-support", 0.3, 0.03)]
    public void OfH_KnownPostures_IsAsHighAsByHand(string key, double expectedH, double withinH) =>
        Assert.Equal(expectedH, PostureHeight.OfH(PostureLibrary.Find(key)!), withinH);

    [Fact]
    public void OfH_EveryPosture_IsAboveItsHighestJointByLessThanAHead()
    {
        foreach (var posture in PostureLibrary.All)
        {
            var heightH = PostureHeight.OfH(posture);
            // A second way: the origins of all segments and the ends of hands, feet and head.
            var jointH = posture.Settle().Bodies.Max(b => b.Contacts.Count >= 0 ? Highest(b.Skeleton) : 0);
            Assert.True(heightH >= jointH - 0.02 && heightH <= jointH + 0.08, $"{posture.Key}: {heightH} over {jointH}");
        }
    }

    private static double Highest(Skeleton skeleton)
    {
        var highest = skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH)).ZH;
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            foreach (var kind in new[] { SegmentKind.UpperArm, SegmentKind.Forearm, SegmentKind.Hand, SegmentKind.Thigh, SegmentKind.Shank, SegmentKind.Foot })
                highest = Math.Max(highest, skeleton.Frame(kind, side).Origin.ZH);
            highest = Math.Max(highest, skeleton.Frame(SegmentKind.Hand, side).At(new(0, 0, -0.1)).ZH);
            highest = Math.Max(highest, skeleton.Frame(SegmentKind.Foot, side).At(new(0.1, 0, -0.039)).ZH);
        }
        return highest;
    }
}
