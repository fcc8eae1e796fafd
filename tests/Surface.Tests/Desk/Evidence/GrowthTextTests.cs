using Slantwise.Desk.Pages.Evidence;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class GrowthTextTests
{
    [Theory]
    // Over three more lessons: .2 ± .05 a lesson is .6 ± .15 logits, 5 of 10 become 6.5, from 5.9 to 7.0 nine times of ten.
    [InlineData(.2, .05, .9, "Where 5 of 10 tries came off in the first lesson, about 6 would now, likely 5 to 7.")]
    [InlineData(.0, .05, .9, "No change to tell: where 5 of 10 tries came off in the first lesson, about 5 would now, likely 4 to 6.")]
    [InlineData(-.3, .05, .9, "Where 5 of 10 tries came off in the first lesson, about 3 would now, likely 2 to 4. What was different lately?")]
    [InlineData(.0, .9, .2, "No change to tell: where 5 of 10 tries came off in the first lesson, about 5 would now, likely 0 to 10. More of this is assumed than seen.")]
    public void Of_Growth_IsANaturalFrequencyWithItsRange(double perLesson, double sd, double share, string said)
    {
        using var english = new Spoken("en-GB");
        Assert.Equal(said, GrowthText.Of(new SharedGrowth(4, 900, 25, new Estimate(perLesson, sd, share, 0))));
    }

    [Fact]
    public void Of_OneLesson_SaysWhatItNeeds()
    {
        using var english = new Spoken("en-GB");
        Assert.StartsWith("What the class gained can be told from two lessons", GrowthText.Of((SharedGrowth?)null));
    }

    [Theory]
    [InlineData(0, "too few timed in two lessons: 0 pupils")]
    [InlineData(1, "too few timed in two lessons: 1 pupil")]
    [InlineData(4, "too few timed in two lessons: 4 pupils")]
    [InlineData(5, "each lesson ×2.00, likely ×1.00 to ×4.00 (5 pupils in two lessons)")]
    public void Own_UnderFivePupils_GivesNobodysGrowth(int pupils, string said)
    {
        using var english = new Spoken("en-GB");
        Assert.Equal(said, GrowthText.Own(new ClassGrowth(pupils, 2 * pupils, Math.Log(2), .3, 0, Math.Log(4), 0)));
    }

    [Fact]
    public void Curve_TheTwoLaws_StandBesideEachOther()
    {
        using var english = new Spoken("en-GB");
        var curve = new LearningCurve(4, new PowerLaw(3, 1, .1), new PowerLaw(3, .5, .1), 0);
        Assert.Equal("twice the lessons: ×2.00 in seconds, ×1.41 in proportion (4 lessons)", GrowthText.Curve(curve));
        Assert.Equal("no curve: it needs three lessons", GrowthText.Curve(new LearningCurve(2, null, null, OrderCautions.FewPoints)));
    }
}
