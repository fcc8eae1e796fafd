using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Levels;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Evidence.Chances;
using Slantwise.Records.Tests.Simulation;

namespace Slantwise.Records.Tests.Evidence.Levels;

public sealed class ClassLevelsTests
{
    [Fact]
    public void Of_ALevel_CountsWhatWasDoneThereAndNothingElse()
    {
        var lesson = Lesson();
        var read = LevelsOf(lesson).Of(LessonBuilder.LevelId(1, 2), ReachBand.Usual)!;

        Assert.Equal(1, read.LevelPlace);
        Assert.Equal((6, 10), (read.Level.Success.SuccessCount, read.Level.Success.TrialCount));
        // By hand: Zoe and Ann decided after their sets at level 2, Ben after one at level 1.
        Assert.Equal((1, 0, 1), (read.Decisions.EasierCount, read.Decisions.SameCount, read.Decisions.HarderCount));
        Assert.Equal([typeof(Decision), typeof(Decision)], read.Decisions.EntryIds.Select(id => lesson.Entries.Single(e => e.Id == id).Fact.GetType()));
        // Cue 2 was left open by Zoe alone; Ben's ticks belong to level 1.
        Assert.Equal([(0, 2), (1, 2)], read.Cues.Select(c => (c.UntickedSetCount, c.CheckedSetCount)));
        Assert.Equal([0, 1, 2], read.Levels.Select(l => l.LevelPlace));
        Assert.Null(read.Levels[1].Difference);
        Assert.All(read.Levels, l => Assert.NotNull(l.Middle));
        // One timed fall of .4 s among the timed tries.
        Assert.Equal(1, read.Holds!.Start.TriedCount - read.Holds.Start.StartedCount);
        Assert.Equal(1, read.Holds.LevelPlace);
    }

    [Fact]
    public void Of_ALevel_ListsEverybodyByLabelWhateverTheyReached()
    {
        var read = LevelsOf(Lesson()).Of(LessonBuilder.LevelId(1, 2), ReachBand.Usual)!;
        Assert.Equal(["Ann", "Ben", "Cas", "Zoe"], read.Pupils.Select(p => p.Label));
        Assert.Equal([5, 0, 0, 5], read.Pupils.Select(p => p.Success.TrialCount));
    }

    [Fact]
    public void Of_ARestrictedPupil_IsNotOfferedItAndHasNoChanceThere()
    {
        var read = LevelsOf(Lesson()).Of(LessonBuilder.LevelId(1, 3), ReachBand.Usual)!;
        var cas = read.Pupils.Single(p => p.Label == "Cas");
        Assert.False(cas.IsOffered);
        Assert.Null(cas.Chance);
        Assert.True(read.IsOfferedToAnybody);
        Assert.Equal(3, read.Band!.OfferedCount);
    }

    [Fact]
    public void Of_PolicyThatRulesItOut_IsOfferedToNobodyAndCountsNobody()
    {
        var lesson = new LessonBuilder().Pupils("Ann").Task(1, "Frog", ["a"], (1, 3, BodyDemand.HeadWeight)).Set("Ann", 1, level: 1, tries: "1 0 1 1 0");
        var read = LevelsOf(lesson).Of(LessonBuilder.LevelId(1, 1), ReachBand.Usual)!;
        Assert.False(read.IsOfferedToAnybody);
        Assert.Null(read.Band);
        Assert.Null(read.Pupils[0].Chance);
        Assert.Null(read.Middle);
        // What was done stays.
        Assert.Equal(5, read.Level.Success.TrialCount);
    }

    [Fact]
    public void Of_RestrictionThatEnded_IsOfferedAgain()
    {
        var record = Lesson().Record();
        var day = record.Lesson.Date;
        record = record with { Restrictions = [.. record.Restrictions.Select(r => r with { Until = day })] };
        Assert.False(LevelsOf([record], day).OfPupil("Cas")[2].IsOffered);
        Assert.True(LevelsOf([record], day.AddDays(1)).OfPupil("Cas")[2].IsOffered);
    }

    [Fact]
    public void OfPupil_EveryLevelOfTheSheet_WithWhatWasDoneAndTheNextLesson()
    {
        var rows = LevelsOf([Lesson().Record()], new DateOnly(2027, 3, 8)).OfPupil("Ben");
        Assert.Equal([1, 2, 3], rows.Select(r => r.Level.LevelNumber));
        Assert.Equal([1, 0, 0], rows.Select(r => r.SetCount));
        Assert.Equal([3, 0, 0], rows.Select(r => r.Success.SuccessCount));
        Assert.All(rows, r => Assert.NotNull(r.Chance));
        // Nobody tried level 3: whatever is said of it is assumed.
        Assert.True(rows[2].Chance!.IsMostlyAssumed);
    }

    [Fact]
    public void Of_BeforeAnyTry_SaysNothingOfTheBandAndCallsAllElseAssumed()
    {
        var lesson = new LessonBuilder().Pupils("Ann", "Ben").Task(1, "Frog", ["a"], (1, 3, null), (2, 5, null));
        var read = LevelsOf(lesson).Of(LessonBuilder.LevelId(1, 1), ReachBand.Usual)!;
        Assert.Null(read.Band);
        Assert.All(read.Pupils, p => Assert.True(p.Chance!.IsMostlyAssumed));
        Assert.True(read.Middle!.IsMostlyAssumed);
    }

    [Fact]
    public void Of_AStrangersLevelOrNoLesson_IsNone()
    {
        Assert.Null(LevelsOf(Lesson()).Of(Guid.CreateVersion7(), ReachBand.Usual));
        Assert.Null(ClassLevels.Of([], [], [], ClassChances.Of([], [], []), new DateOnly(2027, 3, 8)).Of(LessonBuilder.LevelId(1, 1), ReachBand.Usual));
    }

    [Fact]
    public void Of_LevelOnNoSheet_IsReadAndOfferedToNobody()
    {
        var lesson = Lesson();
        lesson.Add("Ann", 1, 2, new Choice(LessonBuilder.LevelId(1, 9)));
        lesson.Add("Ann", 1, 2, new Trial(true), 1);
        var read = LevelsOf(lesson).Of(LessonBuilder.LevelId(1, 9), ReachBand.Usual)!;
        Assert.Null(read.Level.LevelNumber);
        Assert.Equal(1, read.Level.Success.TrialCount);
        Assert.Null(read.Middle);
        Assert.All(read.Pupils, p => Assert.Null(p.Chance));
    }

    [Fact]
    public void Of_ALevelAllAlwaysReach_NobodyIsLikelyToNeed()
    {
        var easy = new LessonBuilder().Pupils("Ann", "Ben").Task(1, "Frog", ["a"], (1, 3, null));
        foreach (var pupil in new[] { "Ann", "Ben" })
            for (var set = 1; set <= 3; set++) easy.Set(pupil, set, level: 1, tries: string.Join(' ', Enumerable.Repeat("1", 40)));
        Assert.True(LevelsOf(easy).Of(LessonBuilder.LevelId(1, 1), ReachBand.Usual)!.Band!.IsUnneeded);
        Assert.False(LevelsOf(Lesson()).Of(LessonBuilder.LevelId(1, 2), ReachBand.Usual)!.Band!.IsUnneeded);
    }

    [Fact]
    public void Of_SimulatedClasses_TheRangeOfPupilsInTheBandHoldsTheTruthOftenEnough()
    {
        // 12 classes × 5 levels, levels self-chosen. Pupils go together where a level is uncertain for all, so the range is known to be too narrow, and
        // self-chosen levels look more alike than they are, which puts too many pupils in the band. Measured on 40 such classes: held in 82 of 100,
        // 1.4 pupils of 26 too many. It must hold in 7 of 10 at least and be off by 2.5 at most.
        var (held, count, gap) = (0, 0, 0.0);
        for (ulong seed = 1; seed <= 12; seed++)
        {
            var simulated = ClassSimulator.Run(SimulationPlans.OneTask(
                seed, pupils: 26, sets: 3, trials: 5, PredictionKind.SuccessCount, [.. Enumerable.Range(1, 5).Select(n => SimulationPlans.Hold(n, 5))]));
            var record = ClassChancesTests.RecordOf(simulated) with { Restrictions = [] };
            var levels = LevelsOf([record], record.Lesson.Date);
            foreach (var level in record.Sheet!.Content.Tasks[0].Levels)
            {
                var band = levels.Of(level.Id, ReachBand.Usual)!.Band!;
                var truth = simulated.Plan.Pupils.Count(p => 1 / (1 + Math.Exp(-simulated.Truth.SuccessLogits(p.Id, level.Id, 0, 0))) is >= .6 and <= .9);
                if (truth >= band.LeastCount && truth <= band.MostCount) held++;
                gap += truth - band.PupilCount;
                count++;
            }
        }
        Assert.InRange((double)held / count, .7, 1);
        Assert.InRange(gap / count, -2.5, .5);
    }

    private static LessonBuilder Lesson() => new LessonBuilder().Pupils("Zoe", "Ann", "Ben", "Cas")
        .Task(1, "Frog", ["hands flat", "hips up"], (1, 3, null), (2, 5, null), (3, 8, BodyDemand.HandWeight))
        .Restrict("Cas", BodyDemand.HandWeight)
        .Set("Zoe", 1, level: 2, tries: "5.0s 0.4s 1 0 1", cues: "1", decision: NextLevel.Easier)
        .Set("Ann", 1, level: 2, tries: "1 1 0 1 0", cues: "1 2", decision: NextLevel.Harder)
        .Set("Ben", 1, level: 1, tries: "1 1 1 0 0", cues: "2", decision: NextLevel.Same);

    private static ClassLevels LevelsOf(LessonBuilder lesson) => LevelsOf([lesson.Record()], lesson.Record().Lesson.Date);

    private static ClassLevels LevelsOf(IReadOnlyList<LessonRecord> records, DateOnly day)
    {
        var unit = UnitEvidence.Of(records);
        return ClassLevels.Of(records, unit.Tasks, unit.Pupils, ClassChances.Of(records, [], []), day);
    }
}

file static class ClassLevelsOfPupils
{
    public static IReadOnlyList<PupilAtLevel> OfPupil(this ClassLevels levels, string label) =>
        levels.OfPupil(levels.Pupils.Single(p => p.Label == label), levels.Tasks[0]);
}
