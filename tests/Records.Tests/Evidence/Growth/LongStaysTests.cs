using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Records.Tests.Evidence.Growth;

public sealed class LongStaysTests
{
    [Fact]
    public void Of_ThreeSetsAtALevelThatSeldomComesOff_IsOneStayWithItsDecisions()
    {
        // Ada stays three times, with a set of one try between; Ben twice only.
        var lesson = new LessonBuilder(setCount: 5).Pupils("Ada", "Ben").Task(1, "Frog", [], (1, 3, null))
            .Set("Ada", 1, level: 1, tries: "0 0 0 0 1", decision: NextLevel.Same).Set("Ada", 2, level: 1, tries: "0", decision: NextLevel.Same)
            .Set("Ada", 3, level: 1, tries: "0 0 0 0 1", decision: NextLevel.Same).Set("Ada", 4, level: 1, tries: "0 0 0 0 0", decision: NextLevel.Same)
            .Set("Ben", 1, level: 1, tries: "1 1 1 1 1", decision: NextLevel.Same).Set("Ben", 2, level: 1, tries: "1 1 1 1 1", decision: NextLevel.Same);
        var stays = LongStays.Of(LessonEvidence.Of(lesson.Record()).Pupils);
        Assert.Equal((0, 1, 1, 3), (stays.NearlyAlwaysCount, stays.SeldomCount, stays.PupilCount, stays.EntryIds.Count));
    }
}
