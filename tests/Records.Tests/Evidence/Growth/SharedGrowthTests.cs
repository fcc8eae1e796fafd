using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Growth;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Tests.Evidence.Growth;

public sealed class SharedGrowthTests
{
    private static LessonRecord Lesson(int number, string tries)
    {
        var lesson = new LessonBuilder(number, setCount: 2, trialCount: 10).Pupils([.. Enumerable.Range(1, 20).Select(i => $"P{i}")]).Task(1, "Frog", [], (1, 3, null), (2, 3, null));
        for (var i = 1; i <= 20 && tries.Length > 0; i++) lesson.Set($"P{i}", 1, level: 1 + i % 2, tries: tries);
        return lesson.Record();
    }

    private static SharedGrowth? Of(params LessonRecord[] lessons) => SharedGrowth.Of(ClassChances.Of(lessons, [], []), UnitEvidence.Of(lessons).Pupils);

    [Fact]
    public void Of_OneLesson_SaysNothing()
    {
        Assert.Null(Of(Lesson(1, "1 0 1 0 1 0 1 0 1 0")));
        Assert.Null(Of(Lesson(1, "")));
        // A lesson held before anybody tried is no beginning.
        Assert.Null(Of(Lesson(1, ""), Lesson(2, "1 0 1 0 1 0 1 0 1 0")));
    }

    [Fact]
    public void Of_AClassThatDoesBetterEachLesson_GrewByTheModelAndItsRangeLeavesOutAHalf()
    {
        var growth = Of(Lesson(1, "1 0 0 0 0 1 0 0 0 1"), Lesson(2, "1 0 1 0 0 1 0 0 1 1"), Lesson(3, "1 1 1 0 1 1 0 1 1 0"))!;
        Assert.Equal((3, 600, 20), (growth.LessonCount, growth.TrialCount, growth.ReturnedPupilCount));
        // By hand: 3 of 10 to 7 of 10 are 1.69 logits over two lessons; where 5 of 10 came off, 8.4 of 10 would. The prior pulls it back.
        Assert.InRange(growth.MeanOfEvenFraction, .70, .86);
        Assert.True(growth.LowOfEvenFraction > .5 && growth.LowOfEvenFraction < growth.MeanOfEvenFraction && growth.MeanOfEvenFraction < growth.HighOfEvenFraction);
        Assert.False(growth.IsMostlyAssumed);
    }

    [Fact]
    public void Of_NobodyInTwoLessons_ReturnedPupilsAreNone()
    {
        var first = new LessonBuilder(1, setCount: 1).Pupils("Ada", "Ben").Task(1, "Frog", [], (1, 3, null)).Set("Ada", 1, level: 1, tries: "1 0 1 0 1").Record();
        var second = new LessonBuilder(2, setCount: 1).Pupils("Ada", "Ben").Task(1, "Frog", [], (1, 3, null)).Set("Ben", 1, level: 1, tries: "1 0 1 1 1").Record();
        Assert.Equal((2, 0), (Of(first, second)!.LessonCount, Of(first, second)!.ReturnedPupilCount));
    }
}
