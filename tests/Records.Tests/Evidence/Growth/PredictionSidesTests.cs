using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Records.Tests.Evidence.Growth;

public sealed class PredictionSidesTests
{
    [Fact]
    public void Of_Sets_AreCountedByASideWithOneTryOfLeeway()
    {
        // By hand: 4 of 2 more; 3 of 2 within one; 2 of 2; 0 of 2 fewer; an unfinished set and one without a prediction say nothing; 9 s of 4 s more.
        var lesson = new LessonBuilder(setCount: 9).Pupils("Ada").Task(1, "Frog", [], (1, 5, null))
            .Set("Ada", 1, level: 1, predicted: 4, tries: "1 1 0 0 0").Set("Ada", 2, level: 1, predicted: 3, tries: "1 1 0 0 0")
            .Set("Ada", 3, level: 1, predicted: 2, tries: "1 1 0 0 0").Set("Ada", 4, level: 1, predicted: 0, tries: "1 1 0 0 0")
            .Set("Ada", 5, level: 1, predicted: 4, tries: "1 1").Set("Ada", 6, level: 1, tries: "1 1 0 0 0")
            .Set("Ada", 7, level: 1, predictedS: 9, tries: "4s 2s 1s 3s 2s");
        var sides = PredictionSides.Of(LessonEvidence.Of(lesson.Record()).Pupils[0].Tasks[0].Sets);
        Assert.Equal((2, 2, 1, 5), (sides.MoreCount, sides.MetCount, sides.FewerCount, sides.SetCount));
        Assert.Equal(5 * 6, sides.EntryIds.Count);
        Assert.Equal(0, PredictionSides.Of([]).SetCount);
    }
}
