using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Evidence.Reach;

public sealed class TaskReachTests
{
    [Fact]
    public void Of_TwoWhoNeverHoldTheEasiest_AreLeftOutAndAShorterHoldIncludesThem()
    {
        var record = Tried(("Ann", "1 1 1 1 0"), ("Ben", "1 1 0 1 1"), ("Cas", "1 0 1 1 1"), ("Dov", "1 1 1 0 1"), ("Eli", "1 1 1 1 0"), ("Fay", "0 0 0 0 0"), ("Gus", "0 0 0 0 0"));
        var reach = ReachOf(record);
        Assert.Equal(["Fay", "Gus"], reach.LeftOut.Select(p => p.Label));
        var added = Assert.Single(reach.Addition!.Levels);
        Assert.True(added.Dose.Amount < 10, $"{added.Dose}");
        Assert.True(reach.Addition.IncludedCount > reach.Whole.IncludedCount);
        Assert.Equal(7 * 15, reach.TrialCount);
    }

    [Fact]
    public void AtLevel_EachLevelAlone_HasItsExpectedNumberWithinItsRange()
    {
        var reach = ReachOf(Tried(("Ann", "1 1 1 1 0"), ("Ben", "1 1 0 1 1"), ("Cas", "1 0 1 1 1"), ("Fay", "0 0 0 0 0")));
        for (var i = 0; i < reach.Levels.Count; i++)
        {
            var alone = reach.AtLevel(i, ReachBand.Usual);
            // The whole splits a pupil's uncertainty in two parts and adds it up again at 101 places.
            Assert.InRange(alone.IncludedCount, reach.Levels[i].PupilCount - .05, reach.Levels[i].PupilCount + .05);
            Assert.InRange(alone.IncludedCount, alone.LeastCount - 1, alone.MostCount + 1);
        }
        Assert.Throws<ArgumentOutOfRangeException>(() => reach.AtLevel(reach.Levels.Count, ReachBand.Usual));
    }

    [Fact]
    public void Of_AllInTheMiddle_AddsNothing()
    {
        var record = Tried([.. Enumerable.Range(1, 8).Select(i => ($"P{i}", "1 1 1 0 1"))]);
        var reach = ReachOf(record);
        Assert.Empty(reach.LeftOut);
        Assert.Null(reach.Addition);
    }

    [Fact]
    public void Of_BeforeAnyTrial_WideAndSaysThatItIsAssumed()
    {
        var record = Tried([.. Enumerable.Range(1, 6).Select(i => ($"P{i}", ""))]);
        var reach = ReachOf(record);
        Assert.Equal(0, reach.TrialCount);
        Assert.All(reach.Pupils, p => Assert.True(p.IsMostlyAssumed));
        Assert.True(reach.Whole.MostCount - reach.Whole.LeastCount >= 2);
    }

    [Fact]
    public void Of_PupilWithoutAnAllowedLevel_IsNeitherIncludedNorStretched()
    {
        var builder = new LessonBuilder(1).Pupils("Ann").Task(1, "Frog", ["a"], (1, 3, BodyDemand.HandWeight)).Restrict("Ann", BodyDemand.HandWeight);
        var pupil = Assert.Single(ReachOf(builder.Record()).Pupils);
        Assert.Equal(0, pupil.Reach.AllowedCount);
        Assert.Equal(0, pupil.Reach.IncludedFraction);
        Assert.Equal(0, pupil.Reach.StretchedFraction);
    }

    // Two levels of one name of which only one asks for a roll: a dose that is made of them is offered to nobody who may not roll.
    [Fact]
    public void CandidateLevels_OfAFormOfWhichOneLevelAsksMore_AllAskForIt()
    {
        Level Over(int number, decimal amount, params BodyDemand[] demands) =>
            new() { Id = new Guid(number, 1, 1, new byte[8]), Name = "Over", Dose = new(DoseKind.RepetitionsCount, amount), Demands = demands };
        var candidates = CandidateLevels.Of(LessonBuilder.TaskId(1), [Over(1, 3), Over(2, 5, BodyDemand.Roll)], []);
        Assert.NotEmpty(candidates);
        Assert.All(candidates, c => Assert.Equal([BodyDemand.Roll], c.Level.Demands));
    }

    [Fact]
    public void CandidateLevels_OfAForm_DosesAroundItsOwnAndOwnLevelsFirst()
    {
        Level Form(int number, decimal holdS) => new() { Id = LessonBuilder.LevelId(1, number), Name = "Tuck", Dose = new Dose(DoseKind.HoldS, holdS) };
        var other = Form(9, 20) with { Name = "Straight" };
        var candidates = CandidateLevels.Of(LessonBuilder.TaskId(1), [Form(1, 5), Form(2, 8)], [Form(1, 5), Form(2, 8), other]);
        Assert.Equal(other.Id, candidates[0].Level.Id);
        Assert.Equal([("Tuck", 3m), ("Tuck", 2m), ("Tuck", 1m), ("Tuck", 10m), ("Tuck", 15m), ("Straight", 15m), ("Straight", 10m), ("Straight", 8m), ("Straight", 5m), ("Straight", 3m), ("Straight", 30m)], candidates.Skip(1).Select(c => (c.Level.Name, c.Level.Dose.Amount)));
        Assert.Equal(candidates.Select(c => c.Level.Id), CandidateLevels.Of(LessonBuilder.TaskId(1), [Form(1, 5), Form(2, 8)], [Form(1, 5), Form(2, 8), other]).Select(c => c.Level.Id));
    }

    private static TaskReach ReachOf(LessonRecord record)
    {
        var task = record.Sheet!.Content.Tasks[0];
        var candidates = CandidateLevels.Of(task.TaskId, task.Levels, task.Levels);
        var chances = ClassChances.Of([record], [task], candidates);
        return TaskReach.Of(task, candidates, record.Pupils, record.School.Policy, record.Restrictions, record.Lesson.Date, chances, ReachBand.Usual);
    }

    // Three sets at the one level, each with the same tries.
    private static LessonRecord Tried(params (string Pupil, string Tries)[] pupils)
    {
        var builder = new LessonBuilder(1).Pupils([.. pupils.Select(p => p.Pupil)]).Task(1, "Tuck sit", ["a"], (1, 10, null));
        foreach (var (pupil, tries) in pupils.Where(p => p.Tries.Length > 0))
            for (var set = 1; set <= 3; set++) builder.Set(pupil, set, level: 1, tries: tries);
        return builder.Record();
    }
}
