using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Reviews;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Evidence.Reviews;

public sealed class OpenCueTests
{
    [Fact]
    public void Of_SeveralSets_CountsEachPupilOnceAsLastSeen()
    {
        // Ana leaves it open and then ticks it, Ben the other way round, Chi never checks.
        var record = Lesson(1).Set("Ana", 1, 1, cues: "1").Set("Ana", 2, 1, cues: "1 2").Set("Ben", 1, 1, cues: "1 2").Set("Ben", 2, 1, cues: "1").Set("Chi", 1, 1, tries: "1").Record();
        var evidence = LessonEvidence.Of(record);
        var cue = OpenCue.Of(evidence.Tasks[0], evidence.Pupils)[1];
        Assert.Equal((1, 2, false), (cue.OpenPupilCount, cue.CheckedPupilCount, cue.IsOpenForMany));
    }

    [Theory]
    // Wilson 90 %, by hand: 4 of 4 is too few pupils; 3 of 6 begins at 0.22, 4 of 6 at 0.35; 12 of 28 at 0.29; 9 of 28 at 0.20.
    [InlineData(4, 4, false)]
    [InlineData(3, 6, false)]
    [InlineData(4, 6, true)]
    [InlineData(12, 28, true)]
    [InlineData(9, 28, false)]
    public void IsOpenForMany_Counts_AsTheRangeLeavesIt(int open, int looked, bool expected) => Assert.Equal(expected, new OpenCue(1, "c", open, looked).IsOpenForMany);
}
