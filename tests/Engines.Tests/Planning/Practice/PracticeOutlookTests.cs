using CsCheck;
using Slantwise.Engines.Planning.Practice;

namespace Slantwise.Engines.Tests.Planning.Practice;

public sealed class PracticeOutlookTests
{
    // By hand: 28 pupils on 10 mats are 3 or 2 a mat; 20 s and 10 s to change; 18 min: 36 turns a mat, 12 each; on 14 mats 18 each.
    [Theory]
    [InlineData(10, 12, 18)]
    [InlineData(14, 18, 18)]
    public void Of_TwentyEightPupils_GivesTheMatArithmetic(int mats, int fewest, int most)
    {
        var outlook = PracticeOutlook.Of(Plain with { MatCount = mats });
        Assert.Equal((fewest, most), (outlook.FewestTrials, outlook.MostTrials));
    }

    [Fact]
    public void Of_ThreeAMat_SharesAreAThirdAndTwoThirds()
    {
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 30 });
        Assert.Equal(90, outlook.CycleS, 1e-9);
        Assert.Equal(1 / 3.0, outlook.PerformingFraction, 1e-9);
        Assert.Equal(2 / 3.0, outlook.WaitingFraction, 1e-9);
        Assert.Equal(0, outlook.RestingFraction, 1e-9);
        // With an observer in each turn one of the two who wait has a part.
        var observed = PracticeOutlook.Of(Plain with { PupilCount = 30, ObserversATurn = 1 });
        Assert.Equal(1 / 3.0, observed.RoleFraction, 1e-9);
        Assert.Equal(1 / 3.0, observed.WaitingFraction, 1e-9);
    }

    [Fact]
    public void Of_RestAndRecordBeside_TakeTheLongerOfBoth()
    {
        // By hand, one pupil alone: 30 s on the mat, away for max(25, 40): a turn every 70 s; in 1,080 s turns begin at 0 to 1,050: 16, all over by the end.
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 1, MatCount = 1, RestS = 25, RecordS = 40 });
        Assert.Equal(70, outlook.CycleS, 1e-9);
        Assert.Equal(16, outlook.FewestTrials);
        Assert.Equal(16 * 30 / 1080.0, outlook.PerformingFraction, 1e-9);
        Assert.Equal(0, outlook.WaitingFraction, 1e-9);
    }

    [Fact]
    public void Of_WritingOnTheMat_CostsEveryoneAndAnObserverNobody()
    {
        // By hand, 3 a mat, writing takes 15 s: turns of 45 s, 24 a mat in 18 min, 8 each; beside the mat or by an observer 12 each as before.
        var plan = Plain with { PupilCount = 30, RecordS = 15 };
        Assert.Equal(8, PracticeOutlook.Of(plan with { RecordedBy = Recording.PerformerOnMat }).FewestTrials);
        Assert.Equal(12, PracticeOutlook.Of(plan with { RecordedBy = Recording.PerformerBeside }).FewestTrials);
        var observed = PracticeOutlook.Of(plan with { RecordedBy = Recording.Observer });
        Assert.Equal(12, observed.FewestTrials);
        // Half a turn of writing for each turn of 30 s.
        Assert.Equal(1 / 6.0, observed.RoleFraction, 1e-9);
    }

    [Fact]
    public void Of_SetsAndTalk_TakeTheirTimeAndTheLastOneFinishes()
    {
        // By hand: 40 min, 8 min of talk, two pauses of a minute: 30 min at the mats. 3 a mat, 3 sets of 5 in turns of 30 s: 45 turns a mat are 22.5 min, so 7.5 min are left.
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 30, LessonS = 2400, TalkS = 480, SetCount = 3, TrialsASet = 5, BetweenSetsS = 60 });
        Assert.Equal(450, outlook.LeftS, 1e-9);
        Assert.Equal(1950, outlook.LastDoneS, 1e-9);
        Assert.Equal(20, outlook.FewestTrials);
    }

    [Fact]
    public void Of_TwoTrialsATurn_SaveTheChange()
    {
        // By hand: 5 + 20 + 2 + 20 + 5 = 52 s a turn; 1,080 s are 20 turns a mat and 40 s: with 3 a mat the first two have 7 turns, the third 6 (12 trials) and, of the 21st, which is the third's, the first trial after 25 s.
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 30, TrialsATurn = 2, AgainS = 2 });
        Assert.Equal((13, 14), (outlook.FewestTrials, outlook.MostTrials));
    }

    [Fact]
    public void Of_PlannedTrialsNotFillingATurn_EndEarlier()
    {
        // By hand, alone: 3 trials in turns of 2 are 52 s and 30 s.
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 1, MatCount = 1, TrialsATurn = 2, AgainS = 2, TrialsASet = 3 });
        Assert.Equal(1080 - 82, outlook.LeftS, 1e-9);
    }

    [Fact]
    public void Of_SideStation_HalvesBothPupilsAndTime()
    {
        // By hand: 30 pupils, 10 mats, two rounds with a change of 60 s: 15 at the mats (2 and 1 a mat) for 510 s: 17 turns a mat, the second of two has 8.
        var outlook = PracticeOutlook.Of(Plain with { PupilCount = 30, SideStationCount = 1, TransitionS = 60 });
        Assert.Equal((8, 17), (outlook.FewestTrials, outlook.MostTrials));
    }

    [Fact]
    public void Of_PlansThatCannotWork_SaySo()
    {
        Assert.True(PracticeOutlook.Of(Plain with { TalkS = 1080 }).Cautions.HasFlag(PracticeCautions.NoTime | PracticeCautions.SomebodyWithout));
        Assert.True(PracticeOutlook.Of(Plain with { PupilCount = 10, PartnersATurn = 1 }).Cautions.HasFlag(PracticeCautions.TooFewForRoles));
        Assert.True(PracticeOutlook.Of(Plain with { PupilCount = 10, RecordS = 5, RecordedBy = Recording.Observer }).Cautions.HasFlag(PracticeCautions.NobodyToRecord));
        Assert.True(PracticeOutlook.Of(Plain with { PupilCount = 9 }).Cautions.HasFlag(PracticeCautions.EmptyPlaces));
        Assert.Equal(PracticeCautions.None, PracticeOutlook.Of(Plain).Cautions);
    }

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeOutlook.Of(Plain with { PupilCount = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeOutlook.Of(Plain with { MatCount = 101 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeOutlook.Of(Plain with { ActionS = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeOutlook.Of(Plain with { RestS = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PracticeOutlook.Of(Plain with { LessonS = double.PositiveInfinity }));
    }

    [Fact]
    public void Of_AnyPlan_SharesAddUpAndMoreMatsNeverTakeTrials() => Plans.Sample(plan =>
    {
        var outlook = PracticeOutlook.Of(plan);
        Assert.Equal(1, outlook.PerformingFraction + outlook.RoleFraction + outlook.RestingFraction + outlook.WaitingFraction, 1e-9);
        foreach (var share in new[] { outlook.PerformingFraction, outlook.RoleFraction, outlook.RestingFraction, outlook.WaitingFraction }) Assert.InRange(share, 0, 1 + 1e-12);
        Assert.InRange(outlook.MeanTrialsCount, outlook.FewestTrials, outlook.MostTrials);
        Assert.True(PracticeOutlook.Of(plan with { MatCount = plan.MatCount + 1 }).FewestTrials >= outlook.FewestTrials);
        Assert.True(PracticeOutlook.Of(plan with { TalkS = plan.TalkS / 2 }).FewestTrials >= outlook.FewestTrials);
        // One queue leaves no mat empty beside a queue: nobody who has fewest in it has fewer than in groups, but for the last begun turn of each.
        Assert.True(PracticeOutlook.Of(plan with { Use = MatUse.OneQueue }).FewestTrials >= outlook.FewestTrials - plan.TrialsATurn);
    });

    [Fact]
    public void Of_AnyPlanWithQueues_FewestAgreeWithTheFormula() => Plans.Sample(plan =>
    {
        // With pupils enough that the mat is never free: floor(time / (pupils a mat · turn)) whole turns for the last in the row.
        plan = plan with { RestS = 0, RecordS = 0, TrialsATurn = 1, LeaveS = 0, SideStationCount = 0 };
        var group = (plan.PupilCount + plan.MatCount - 1) / plan.MatCount;
        Assert.Equal((int)Math.Floor(plan.PracticeS / (group * plan.TurnS) + 1e-9), PracticeOutlook.Of(plan).FewestTrials);
    });

    internal static PracticePlan Plain { get; } = new() { PupilCount = 28, MatCount = 10, LessonS = 1080, ActionS = 20, EnterS = 5, LeaveS = 5 };

    internal static Gen<PracticePlan> Plans { get; } =
        from counts in Gen.Select(Gen.Int[1, 35], Gen.Int[1, 15], Gen.Int[0, 2], Gen.Int[1, 3])
        from times in Gen.Select(Gen.Int[2, 40], Gen.Int[0, 10], Gen.Int[0, 60], Gen.Int[0, 30])
        from roles in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 1], Gen.Int[1, 3])
        select new PracticePlan
        {
            PupilCount = counts.Item1, MatCount = counts.Item2, SideStationCount = counts.Item3, TrialsATurn = counts.Item4, LessonS = 3000, TalkS = 400, SetCount = 2,
            TrialsASet = 4, BetweenSetsS = 30, ActionS = times.Item1, EnterS = times.Item2, LeaveS = times.Item2, RestS = times.Item3, RecordS = times.Item4,
            PartnersATurn = roles.Item1, ObserversATurn = roles.Item2, RecordedBy = (Recording)roles.Item3,
        };
}
