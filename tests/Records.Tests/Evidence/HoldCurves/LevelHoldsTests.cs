using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.HoldCurves;

namespace Slantwise.Records.Tests.Evidence.HoldCurves;

public sealed class LevelHoldsTests
{
    private static LessonBuilder Lesson() => new LessonBuilder().Pupils("Ada", "Ben").Task(1, "V-sit", [], (1, 3, null), (2, 5, null), (3, 8, null));

    private static IReadOnlyList<LevelHolds> Of(LessonBuilder lesson)
    {
        var evidence = LessonEvidence.Of(lesson.Record());
        return LevelHolds.Of(evidence.Pupils, evidence.Tasks);
    }

    [Fact]
    public void Of_NothingTried_IsEmpty() => Assert.Empty(Of(Lesson().Set("Ada", 1, level: 1)));

    [Fact]
    public void Of_TimedTries_AreTheStepsOfTheirLevel()
    {
        var holds = Of(Lesson()
            .Set("Ada", 1, level: 2, tries: "2.0s 4.0s 5.0s 6.2s 0.5s").Set("Ada", 2, level: 2, tries: "1 5.0s 5.0s 4.0s 5.0s").Set("Ben", 1, level: 3, tries: "8.0s"));

        // By hand: 10 at level 2; falls at .5, 2, and 4 twice; 9/10, 8/10, then 6/10 at 4 s; six stopped at the dose, the one of 6.2 s too.
        Assert.Equal([1, 2], holds.Select(h => h.LevelPlace));
        var curve = holds[0].Curve;
        Assert.Equal([.5, 2, 4, 5], curve.Steps.Select(s => s.TimeS));
        Assert.Equal([.9, .8, .6, .6], curve.Steps.Select(s => Math.Round(s.HeldFraction, 12)));
        Assert.Equal((10, 4, 1, 5.0), (curve.HoldCount, curve.FallenCount, curve.PupilCount, holds[0].DoseS));
        Assert.Null(curve.Median.MedianS);
        Assert.True(holds[0].HasCurve);
        // The fall at half a second never got into the position.
        Assert.Equal((10, 9), (holds[0].Start.TriedCount, holds[0].Start.StartedCount));
        Assert.False(holds[1].HasCurve);
    }

    [Fact]
    public void Of_FallsNobodyTimed_CountAsEndedBeforeTheDose()
    {
        // By hand: of ten, falls at .5, 2 and 4 twice; two more misses without a time are spread over these four as the known falls are. Six of twelve are left.
        var lesson = Lesson().Set("Ada", 1, level: 2, tries: "2.0s 4.0s 5.0s 6.2s 0.5s").Set("Ada", 2, level: 2, tries: "1 5.0s 5.0s 4.0s 5.0s")
            .Set("Ben", 1, level: 2, tries: "0 0");
        var holds = Of(lesson)[0];
        Assert.Equal((10, 2, true), (holds.TimedCount, holds.UntimedFallCount, holds.HasCurve));
        Assert.Equal([.5, 2, 4, 5], holds.Curve.Steps.Select(s => s.TimeS));
        Assert.Equal([.875, .75, .5, .5], holds.Curve.Steps.Select(s => Math.Round(s.HeldFraction, 6)));
        Assert.Equal([10, 9, 8, 6], holds.Curve.Steps.Select(s => s.AtRiskCount));
        Assert.Equal([1, 1, 2, 0], holds.Curve.Steps.Select(s => s.FallenCount));
    }

    [Fact]
    public void Of_NoFallTimedAtAll_HasNoCurve()
    {
        // When the misses ended is open from 0 to the dose.
        var holds = Assert.Single(Of(Lesson().Set("Ada", 1, level: 1, tries: "1 1 1 1 1").Set("Ada", 2, level: 1, tries: "1 1 1 1 1").Set("Ben", 1, level: 1, tries: "0 0")));
        Assert.Equal((10, 2, false), (holds.TimedCount, holds.UntimedFallCount, holds.HasCurve));
    }

    [Fact]
    public void Of_NobodyFell_HasNoCurve() =>
        Assert.False(Assert.Single(Of(Lesson().Set("Ada", 1, level: 1, tries: "1 1 1 1 1").Set("Ada", 2, level: 1, tries: "1 1 1 1 1"))).HasCurve);
}
