using CsCheck;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Tests.Planning;

public sealed class LessonPlanningTests
{
    // By hand: a turn is 5 + 20 + 5 = 30 s. Three share a mat: a turn each 90 s, 1,080 / 90 = 12 tries; two share: 60 s, more than 30 + 10 of rest: 18.
    [Fact]
    public void Of_TwentyEightPupilsOnTenMats_GivesTheTriesByHand()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        Assert.Equal((12, 18), (planning.Outlook.FewestTrials, planning.Outlook.MostTrials));
        Assert.Equal(3, planning.PupilsAMat);
        Assert.Equal(1800, planning.EndS);
        Assert.Equal(420, planning.TalkS);
        Assert.Empty(planning.Warnings);
        // Where people vary the one with fewest has fewer, never more than there is time for.
        Assert.Equal(400, planning.Ranges.RunCount);
        Assert.InRange(planning.Ranges.FewestTrials.High, planning.Ranges.FewestTrials.Low, 13);
    }

    // By hand: the third of a mat begins the fifth turn at 14 · 30 = 420 s of practice and is off the mat at 450; practice begins after 12 min.
    [Fact]
    public void Of_FiveTriesEach_SaysWhenTheLastOneIsDone()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        Assert.InRange(planning.LastDoneS, 720 + 445, 720 + 450);
    }

    // By hand: 300 s of the 445 to 450 lie in the first phase of practice; three minutes of talk come between.
    [Fact]
    public void Of_TalkBetweenPractice_PutsTheEndAfterIt()
    {
        LessonPhase[] phases = [new(PhaseKind.Management, 5, ""), new(PhaseKind.Activity, 5, ""), new(PhaseKind.Instruction, 3, ""), new(PhaseKind.Activity, 13, ""), new(PhaseKind.Instruction, 4, "")];
        var planning = LessonPlanning.Of(PlannedLesson.Of(phases: phases), PlannedLesson.Sheet(), PlanningChoice.Usual);
        Assert.InRange(planning.LastDoneS, 300 + 445 + 180, 300 + 450 + 180);
        Assert.Equal(26 * 60, planning.EndS);
        // Talk after practice takes nothing from it.
        Assert.Equal(180, planning.TalkS);
    }

    // By hand: 11 to 13 mats leave three on one; 14 leave two. Talk of 7 min may be cut to 3.5: 180 s less are 1,260 / 90 = 14 tries, 150 s are 13.
    [Fact]
    public void Of_TwoTriesMore_FindsMatsAndTalk()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        var reaching = planning.More.Single.Where(c => c.GainTrials >= 2).ToList();
        Assert.Equal((4, 6), (reaching[0].AddedMats, reaching[0].GainTrials));
        Assert.Equal((180, 2), (reaching[1].CutTalkS, reaching[1].GainTrials));
        Assert.Equal(2, reaching.Count);
    }

    // By hand: 11 tries take 990 s of 1,080, and a quarter of 7 min of talk is 105 s; 2 sets of 6 take 1,080 s of 1,080 − 60.
    [Theory]
    [InlineData(1, 10, null)]
    [InlineData(1, 11, PlanningWarning.TalkOverruns)]
    [InlineData(2, 6, PlanningWarning.LastAfterEnd)]
    public void Of_MoreTriesPlanned_WarnsWhenTimeIsShort(int sets, int trials, PlanningWarning? expected)
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(sets, trials), PlanningChoice.Usual);
        Assert.Equal(expected is { } one ? [one] : Array.Empty<PlanningWarning>(), planning.Warnings);
    }

    [Fact]
    public void Of_ALessonWithNothingPlanned_SaysWhatIsAssumed()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(mats: null, phases: []), null, PlanningChoice.Usual);
        Assert.Equal([PlanningWarning.NoMatsPlanned, PlanningWarning.NoPhasesPlanned, PlanningWarning.NoSheet], planning.Warnings.Take(3));
        Assert.Equal((14, 38 * 60.0, 15), (planning.Plan.MatCount, planning.EndS, planning.Plan.PlannedTrials));
        // Mats that are tried are not assumed.
        var tried = LessonPlanning.Of(PlannedLesson.Of(mats: 0), PlannedLesson.Sheet(), PlanningChoice.Usual with { MatCount = 7 });
        Assert.Equal(7, tried.Plan.MatCount);
        Assert.DoesNotContain(PlanningWarning.NoMatsPlanned, tried.Warnings);
    }

    [Fact]
    public void Of_PupilsAMat_TakesTheMatsThatNeeds()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual with { PupilsAMat = 2, MatCount = 3 });
        Assert.Equal((14, 2, 18), (planning.Plan.MatCount, planning.PupilsAMat, planning.Outlook.FewestTrials));
        Assert.Contains(PlanningWarning.MoreMatsThanPlanned, planning.Warnings);
    }

    [Fact]
    public void Of_NoPractice_SaysOnlyThat()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(phases: [new(PhaseKind.Instruction, 10, "")]), PlannedLesson.Sheet(), PlanningChoice.Usual);
        Assert.Equal([PlanningWarning.NoPractice], planning.Warnings);
        Assert.Equal(0, planning.Outlook.MostTrials);
    }

    // By hand: of 18 min each pupil of three waits some; what waits is taken out of practising and put to waiting, so that all shares add up.
    [Fact]
    public void Of_Shares_AddUpAndHaveSourcesWhereThereIsAValue()
    {
        var blocks = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual).Blocks;
        Assert.Equal(1, blocks.Shares.Sum(s => s.ShareFraction), 1e-9);
        Assert.Equal(35 * 60, blocks.Shares.Sum(s => s.TimeS), 1e-6);
        Assert.All(blocks.Shares.Where(s => s.Orientation is not null), s => Assert.NotEmpty(s.Orientation!.Value.Source));
        Assert.Equal(105, blocks.OverrunS, 1e-9);
    }

    [Fact]
    public void Of_TheSameLesson_SimulatesTheSameLessons()
    {
        var (record, sheet) = (PlannedLesson.Of(), PlannedLesson.Sheet());
        Assert.Equal(LessonPlanning.Of(record, sheet, PlanningChoice.Usual).Ranges, LessonPlanning.Of(record, sheet, PlanningChoice.Usual).Ranges);
        Assert.NotEqual(
            LessonPlanning.Of(record, sheet, PlanningChoice.Usual with { Seed = 1 }).Ranges, LessonPlanning.Of(record, sheet, PlanningChoice.Usual with { Seed = 2 }).Ranges);
    }

    [Theory]
    [InlineData(0, 18, PlanningProblem.NoPupils)]
    [InlineData(201, 18, PlanningProblem.TooManyPupils)]
    [InlineData(28, 180, PlanningProblem.TooLong)]
    public void ProblemOf_WhatCannotBePlanned_IsNamedAndRefused(int pupils, int minutes, PlanningProblem expected)
    {
        var record = PlannedLesson.Of(pupils, phases: [new(PhaseKind.Activity, minutes, ""), new(PhaseKind.Activity, 61, "")]);
        Assert.Equal(expected, LessonPlanning.ProblemOf(record));
        Assert.Throws<ArgumentException>(() => LessonPlanning.Of(record, null, PlanningChoice.Usual));
    }

    [Fact]
    public void Of_OneMatMoreOrLessRest_NeverGivesFewerTries() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 20], Gen.Int[0, 60], Gen.Int[1, 3], Gen.Int[1, 10]).Sample(
            (pupils, mats, restS, sets, trials) =>
            {
                var (record, sheet) = (PlannedLesson.Of(pupils), PlannedLesson.Sheet(sets, trials));
                int Fewest(int m, double r) => LessonPlanning.Of(record, sheet, new PlanningChoice { MatCount = m, RestS = r }).Outlook.FewestTrials;
                var here = Fewest(mats, restS);
                return Fewest(mats + 1, restS) >= here && Fewest(mats, restS + 5) <= here;
            },
            iter: 20, threads: 1);
}
