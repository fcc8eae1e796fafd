using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Engagement;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Evidence.Engagement;

public sealed class LessonEngagementTests
{
    [Fact]
    public void Of_Looks_AreInTheirOrderWithTheRangeOfTheLooksThemselves()
    {
        var builder = Lesson(1);
        builder.Add(null, null, null, new EngagementScan(18, 24));
        builder.Add(null, null, null, new EngagementScan(12, 24));
        builder.Add(null, null, null, new EngagementScan(20, 20));
        var engagement = LessonEngagement.Of(builder.Record())!;
        // By hand: 0.75, 0.5, 1; the mean of the three is 0.75, not 50 of 68.
        Assert.Equal([0.75, 0.5, 1], engagement.Looks.Select(l => l.ShareFraction));
        Assert.Equal((0.5, 1, 0.75), (engagement.LowFraction, engagement.HighFraction, engagement.MeanFraction));
    }

    [Fact]
    public void Of_WithdrawnOrCorrectedLook_DoesNotCount()
    {
        var builder = Lesson(1);
        var first = builder.Add(null, null, null, new EngagementScan(1, 24));
        builder.Add(null, null, null, new EngagementScan(21, 24), supersedes: first.Id);
        var second = builder.Add(null, null, null, new EngagementScan(2, 24));
        builder.Add(null, null, null, new Withdrawal(), supersedes: second.Id);
        Assert.Equal([21], LessonEngagement.Of(builder.Record())!.Looks.Select(l => l.EngagedCount));
        Assert.Null(LessonEngagement.Of(Lesson(2).Set("Ana", 1, 1, tries: "1").Record()));
    }
}
