using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Lessons;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Evidence.Chances;
using Slantwise.Records.Tests.Simulation;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence.Foresight;

public sealed class ClassForesightTests
{
    private static LessonBuilder Lesson(int number) => new LessonBuilder(number).Pupils("Ada", "Ben", "Cem").Task(1, "V-sit", [], (1, 3, null), (2, 5, null));

    [Fact]
    public void Of_NoLessonOrNoPrediction_HasNothing()
    {
        foreach (var foresight in new[] { ClassForesight.Of([]), ClassForesight.Of([Lesson(1).Set("Ada", 1, level: 1, tries: "1 1 0 0 0").Record()]) })
        {
            Assert.Empty(foresight.Pupils);
            Assert.Null(foresight.Luck);
            Assert.Null(foresight.Scores.BrierFraction);
            Assert.Equal(BiasSign.Unclear, foresight.Sign);
        }
    }

    [Fact]
    public void Of_OneLesson_ScoresItAndExpectsNothing()
    {
        var foresight = ClassForesight.Of([Lesson(1)
            .Set("Ben", 1, level: 1, predicted: 4, tries: "1 1 0 0 0").Set("Ada", 1, level: 1, predicted: 2, tries: "1 1 0 0 0")
            .Set("Ada", 2, level: 1, predicted: 3, tries: "1 1").Record()]);

        // By hand: 2 of 5 twice, said 4/5 and 2/5: mean squares (2·.04 + 3·.64)/5 = .4 and (2·.36 + 3·.16)/5 = .24, mean .32. The unfinished set is not compared.
        Assert.Equal(.32, foresight.Scores.BrierFraction!.Value, 1e-12);
        Assert.Equal((2, 10), (foresight.Scores.SetCount, foresight.Scores.TrialCount));
        Assert.Equal(["Ada", "Ben"], foresight.Pupils.Select(p => p.Label));
        Assert.Equal(2, foresight.EarlySetCount);
        Assert.Null(foresight.Luck);
        Assert.All(foresight.Pupils, p => Assert.Equal((BiasSign.Unclear, true), (p.Sign, p.IsMostlyClass)));
        Assert.Equal(6, foresight.Pupils[0].EntryIds.Count);
    }

    [Fact]
    public void Of_EverybodySaysAllInTheLastLesson_MoreOptimismAndTheSameLuck()
    {
        // A law: what is said moves optimism and bias, never luck; what was expected is from before it was said.
        var records = Records();
        Assert.Contains(records[^1].Entries, e => e.Fact is Prediction { SuccessCount: < 5 });
        var before = ClassForesight.Of(records);
        var bold = ClassForesight.Of([.. records.SkipLast(1), records[^1] with
        {
            Entries = [.. records[^1].Entries.Select(e => e.Fact is Prediction { SuccessCount: not null } ? e with { Fact = new Prediction(5) } : e)],
        }]);
        Assert.NotNull(before.Luck);
        Assert.Equal(before.Luck.Value.LuckFraction, bold.Luck!.Value.LuckFraction);
        Assert.True(bold.Luck.Value.OptimismFraction > before.Luck.Value.OptimismFraction);
        Assert.True(bold.Bias.ClassMeanLogits > before.Bias.ClassMeanLogits);
        Assert.Equal(before.EarlySetCount, bold.EarlySetCount);
    }

    [Fact]
    public void Of_AnyUnit_PredictionLessResultIsOptimismLessLuckAndRangesHoldTheirMiddle()
    {
        var foresight = ClassForesight.Of(Records());
        Assert.True(foresight.Luck!.Value.SetCount + foresight.EarlySetCount == foresight.Scores.SetCount);
        Assert.InRange(foresight.Luck.Value.SoFewFraction, 0, 1);
        Assert.All(foresight.Pupils, p => Assert.InRange(ClassForesightMiddle(p), p.LowOfEvenFraction, p.HighOfEvenFraction));
        Assert.Equal(foresight.Pupils.Select(p => p.Label).Order(StringComparer.InvariantCultureIgnoreCase), foresight.Pupils.Select(p => p.Label));
    }

    private static double ClassForesightMiddle(PupilForesight pupil) => 1 / (1 + Math.Exp(-pupil.Bias.MeanLogits));

    private static List<LessonRecord> Records()
    {
        var plan = SimulationPlans.Unit(lessons: 4);
        var simulated = ClassSimulator.Run(plan);
        return plan.Lessons.Select((_, i) => ClassChancesTests.RecordOf(simulated, i)).ToList();
    }

    [Fact]
    public void Of_MoreTypedIntoTheLastLesson_FitsNothingAnewAndSaysTheSameAsWithoutMemory()
    {
        var simulated = ClassSimulator.Run(SimulationPlans.Unit(pupils: 8, lessons: 3));
        var records = Enumerable.Range(0, 3).Select(i => ClassChancesTests.RecordOf(simulated, i)).ToList();
        var half = records[2] with { Entries = [.. records[2].Entries.Take(records[2].Entries.Count / 2)] };
        var fits = new EarlierFits();
        ClassForesight.Of([.. records[..2], half], fits);
        var first = fits.FitCount;
        Assert.NotEqual(0, first);

        AssertSame(ClassForesight.Of(records), ClassForesight.Of(records, fits));
        Assert.Equal(first, fits.FitCount);

        // Another first lesson is another belief before each that follows.
        List<LessonRecord> changed = [records[0] with { Entries = [.. records[0].Entries.SkipLast(30)] }, .. records[1..]];
        AssertSame(ClassForesight.Of(changed), ClassForesight.Of(changed, fits));
        Assert.Equal(2 * first, fits.FitCount);
    }

    private static void AssertSame(ClassForesight expected, ClassForesight found)
    {
        Assert.Equal(expected.Luck, found.Luck);
        Assert.Equal(expected.Bias.ClassMeanLogits, found.Bias.ClassMeanLogits);
        Assert.Equal(expected.Pupils.Select(p => p.LowOfEvenFraction), found.Pupils.Select(p => p.LowOfEvenFraction));
        Assert.Equal(expected.EarlySetCount, found.EarlySetCount);
    }
}
