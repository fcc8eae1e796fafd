using Slantwise.Engines.Statistics.Orders;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Orders;

namespace Slantwise.Records.Tests.Evidence.Orders;

public sealed class TaskOrderTests
{
    private static LessonBuilder Lesson(int pupils) => new LessonBuilder(setCount: 4)
        .Pupils([.. Enumerable.Range(1, pupils).Select(Name)]).Task(1, "Frog", ["a"], (1, 3, null), (2, 3, null), (3, 3, null));

    private static string Name(int i) => $"P{i:00}";

    private static TaskOrder Of(LessonBuilder lesson, bool withModel = false)
    {
        var unit = UnitEvidence.Of([lesson.Record()]);
        return Assert.Single(TaskOrder.Of(unit.Pupils, unit.Tasks, withModel ? ClassChances.Of([lesson.Record()], [], []) : null));
    }

    [Fact]
    public void Of_NothingTried_IsUndefinedAndSaysSo()
    {
        var order = Of(Lesson(3));
        Assert.True(order.Whole.Cautions.HasFlag(OrderCautions.NoData));
        Assert.Null(order.Whole.ReproducibilityFraction);
        Assert.Equal(2, order.Pairs.Count);
        Assert.All(order.Pairs, p => Assert.Equal((OrderStanding.NotEnough, null, 0), (p.Standing, p.BothRange, p.EntryIds.Count)));
    }

    [Fact]
    public void Of_PupilsWhoTriedBoth_AreCountedWithTheirTries()
    {
        // By hand. P01 managed both, P02 only level 1, P03 only level 2, P04 neither; P05 has too few tries at level 2, P06 tried level 1 alone.
        var lesson = Lesson(6)
            .Set("P01", 1, level: 1, tries: "1 1 0").Set("P01", 2, level: 2, tries: "1 1 0 0")
            .Set("P02", 1, level: 1, tries: "1 1 1").Set("P02", 2, level: 2, tries: "0 0 1")
            .Set("P03", 1, level: 1, tries: "0 0 1").Set("P03", 2, level: 2, tries: "1 1 1")
            .Set("P04", 1, level: 1, tries: "0 0 0").Set("P04", 2, level: 2, tries: "0 0 0")
            .Set("P05", 1, level: 1, tries: "1 1 1").Set("P05", 2, level: 2, tries: "1 1")
            .Set("P06", 1, level: 1, tries: "1 1 1");
        var pair = Of(lesson).Pairs[0];
        Assert.Equal((1, 2, 4, 1, 1), (pair.EasierNumber, pair.HarderNumber, pair.Counts.ComparedCount, pair.Counts.AsOrderedCount, pair.Counts.AgainstCount));
        Assert.Equal((2, 1), (pair.ManagedHarderCount, pair.ManagedBothCount));
        Assert.Equal(3 + 4 + 3 * 6, pair.EntryIds.Count);
        Assert.All(Of(lesson).Pairs[1].EntryIds, _ => Assert.Fail("Nobody tried level 3."));
    }

    [Theory]
    [InlineData(14, 9, 1, OrderStanding.PerhapsAgainst)]
    [InlineData(14, 1, 9, OrderStanding.Unclear)]
    [InlineData(14, 3, 3, OrderStanding.Unclear)]
    [InlineData(4, 3, 0, OrderStanding.NotEnough)]
    public void Standing_CountsAlone_NeverSaysMoreThanALean(int pupils, int against, int asOrdered, OrderStanding expected)
    {
        var lesson = Lesson(pupils);
        for (var i = 1; i <= pupils; i++)
        {
            lesson.Set(Name(i), 1, level: 1, tries: i <= against ? "0 0 0 1 0" : "1 1 1 0 1");
            lesson.Set(Name(i), 2, level: 2, tries: i > against && i <= against + asOrdered ? "0 0 1 0 0" : "1 1 0 1 1");
        }
        Assert.Equal(expected, Of(lesson).Pairs[0].Standing);
    }

    [Fact]
    public void Standing_TheFirstFailsWhereTheSecondComesOff_SpeaksAgainstTheSheet()
    {
        var lesson = Lesson(16);
        for (var i = 1; i <= 16; i++) lesson.Set(Name(i), 1, level: 1, tries: "0 0 1 0 0").Set(Name(i), 2, level: 2, tries: i % 4 == 0 ? "1 1 0 0 1" : "1 1 1 1 0");
        var pair = Of(lesson, withModel: true).Pairs[0];
        Assert.True(pair.LowOfEvenFraction > .5, $"{pair.LowOfEvenFraction}");
        Assert.Equal(OrderStanding.Against, pair.Standing);
    }

    [Fact]
    public void Standing_AsTheSheetSays_GoesWithIt()
    {
        var lesson = Lesson(16);
        for (var i = 1; i <= 16; i++) lesson.Set(Name(i), 1, level: 1, tries: "1 1 1 1 0").Set(Name(i), 2, level: 2, tries: "0 0 1 0 0");
        Assert.Equal(OrderStanding.AsOrdered, Of(lesson, withModel: true).Pairs[0].Standing);
        // Level 3 nobody tried: the model starts from the sheet's order, and that is no evidence for it.
        Assert.Equal((true, OrderStanding.NotEnough), (Of(lesson, withModel: true).Pairs[1].IsMostlyAssumed, Of(lesson, withModel: true).Pairs[1].Standing));
    }

    [Fact]
    public void Of_ATaskWithOneLevel_HasNoOrder()
    {
        var unit = UnitEvidence.Of([new LessonBuilder().Pupils("Ada").Task(1, "Frog", [], (1, 3, null)).Record()]);
        Assert.Empty(TaskOrder.Of(unit.Pupils, unit.Tasks, null));
    }
}
