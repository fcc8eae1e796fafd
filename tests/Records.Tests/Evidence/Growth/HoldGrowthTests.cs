using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Records.Tests.Evidence.Growth;

public sealed class HoldGrowthTests
{
    private static LessonBuilder Lesson(int number) => new LessonBuilder(number).Pupils("Ada", "Ben", "Cem").Task(1, "Frog", [], (1, 10, null), (2, 10, null));

    private static IReadOnlyList<HoldGrowth> Of(params LessonBuilder[] lessons)
    {
        var unit = UnitEvidence.Of([.. lessons.Select(l => l.Record())]);
        return HoldGrowth.Of(unit.Pupils, unit.Tasks);
    }

    [Fact]
    public void Of_TimesOfOneLesson_HaveNoGrowth() => Assert.Empty(Of(Lesson(1).Set("Ada", 1, level: 1, tries: "2s 3s")));

    [Fact]
    public void Of_TwoLevels_AreNeverJoined() =>
        Assert.Empty(Of(Lesson(1).Set("Ada", 1, level: 1, tries: "2s 3s"), Lesson(2).Set("Ada", 1, level: 2, tries: "4s 5s")));

    [Fact]
    public void Of_TimesOfThreeLessons_GiveMeansOfMiddlesAndBothCurves()
    {
        // By hand: Ada's middles 2, 4, 8; Ben's 3, 6 and none; untimed tries and one at 0 s say nothing of time.
        var growth = Assert.Single(Of(
            Lesson(1).Set("Ada", 1, level: 1, tries: "1s 2s 9s 1").Set("Ben", 1, level: 1, tries: "2s 4s 0s"),
            Lesson(2).Set("Ada", 1, level: 1, tries: "4s").Set("Ben", 1, level: 1, tries: "6s"),
            Lesson(3).Set("Ada", 1, level: 1, tries: "8s 10s 2s")));
        Assert.Equal((1, 0), (growth.TaskNumber, growth.LevelPlace));
        Assert.Equal([new LessonHolds(1, 2, 5, 0, 2.5), new LessonHolds(2, 2, 2, 0, 5), new LessonHolds(3, 1, 3, 1, 8)], growth.Lessons);
        // Both doubled from the first to the second; Ada did again: log 2 a lesson, exactly.
        Assert.Equal(2, growth.Own.PupilCount);
        Assert.Equal(Math.Log(2), growth.Own.GrowthNats!.Value, 1e-12);
        Assert.Equal((3, true), (growth.Curve.PointCount, growth.Curve.Cautions.HasFlag(OrderCautions.FewPoints)));
        Assert.True(growth.Curve is { InLogs: not null, InSeconds: not null });
        Assert.False(growth.IsMostlyStopped);
    }

    [Fact]
    public void IsMostlyStopped_HeldToTheDoseThroughout_SaysSo() =>
        Assert.True(Assert.Single(Of(Lesson(1).Set("Ada", 1, level: 1, tries: "10s 4s"), Lesson(2).Set("Ada", 1, level: 1, tries: "10s"))).IsMostlyStopped);
}
