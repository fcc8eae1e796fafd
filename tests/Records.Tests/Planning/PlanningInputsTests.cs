using CsCheck;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Tests.Planning;

/// <summary>What can be tried, by hand on the lesson of <see cref="PlannedLesson"/>: 18 min of practice, a turn of 5 + 20 + 5 s, 10 s of rest. A try counts once its action is over, 25 s after the turn begins.</summary>
public sealed class PlanningInputsTests
{
    private static LessonPlanning Of(PlanningChoice choice, int pupils = 28, int sets = 1, int trials = 5) => LessonPlanning.Of(PlannedLesson.Of(pupils), PlannedLesson.Sheet(sets, trials), choice);

    private static (int, int) Tries(PlanningChoice choice, int pupils = 28) => (Of(choice, pupils).Outlook.FewestTrials, Of(choice, pupils).Outlook.MostTrials);

    // By hand: two on a mat for one place begin at 30 + 60 k ≤ 1,055, k ≤ 17, the first at 60 k: 18 each; with a place each a turn begins every 30 + 10 s, 40 k ≤ 1,055, k ≤ 26.
    [Fact]
    public void Performers_TwoAtOnceOnAMat_NeedNotWaitForEachOther()
    {
        Assert.Equal((18, 18), Tries(PlanningChoice.Usual, 20));
        Assert.Equal((27, 27), Tries(new() { PerformersAMat = 2 }, 20));
    }

    // By hand: of three at a mat one performs, 1/3 of the time each; rest is 10 of 90 s; one partner takes 1/3 of it, and 2/9 are left to wait in place of 5/9. Ends of the lesson shift it by a turn.
    [Theory]
    [InlineData(0, 0, 0, 5.0 / 9)]
    [InlineData(1, 0, 1.0 / 3, 2.0 / 9)]
    [InlineData(0, 1, 1.0 / 3, 2.0 / 9)]
    public void PartnersAndObservers_OfThreeAtAMat_TakeFromWaitingAndGiveNoTry(int partners, int observers, double roleFraction, double waitingFraction)
    {
        var planning = Of(new() { MatCount = 9, PartnersATurn = partners, ObserversATurn = observers }, 27);
        Assert.Equal(roleFraction, planning.Outlook.RoleFraction, 0.03);
        Assert.Equal(waitingFraction, planning.Outlook.WaitingFraction, 0.03);
        Assert.Equal(12, planning.Outlook.FewestTrials);
        Assert.Empty(planning.Warnings);
    }

    // By hand: a turn of 60 s, the third begins at 120 + 180 k ≤ 1,080 − 55, k ≤ 5.
    [Fact]
    public void Action_OfFiftySeconds_GivesSixTries() => Assert.Equal(6, Tries(new() { ActionS = 50 }).Item1);

    // By hand: a turn of two is 5 + 20 + 5 + 20 + 5 = 55 s, the third begins at 110 + 165 k, k ≤ 5, both tries within 50 s: 12.
    [Fact]
    public void TrialsATurn_TwoInARow_GiveTwelve() => Assert.Equal(12, Tries(new() { TrialsATurn = 2 }).Item1);

    // By hand: with 10 s of writing on the mat a turn is 40 s, the third begins at 80 + 120 k ≤ 1,055, k ≤ 8; beside the mat it lies within the rest.
    [Theory]
    [InlineData(Recording.PerformerOnMat, 9)]
    [InlineData(Recording.PerformerBeside, 12)]
    [InlineData(Recording.Observer, 12)]
    public void RecordedBy_OnTheMat_TakesTheMatsTime(Recording by, int tries) => Assert.Equal(tries, Tries(new() { RecordedBy = by, RecordS = 10 }).Item1);

    // By hand: three pauses of 30 s leave 990 s: 60 + 90 k ≤ 965, k ≤ 10; 4 sets of 3 are 12 tries.
    [Fact]
    public void Sets_OfOnesOwn_TakeTheirPausesFromPractice()
    {
        var planning = Of(new() { SetCount = 4, TrialCount = 3, BetweenSetsS = 30 });
        Assert.Equal((12, 11), (planning.Plan.PlannedTrials, planning.Outlook.FewestTrials));
        Assert.Contains(PlanningWarning.LastAfterEnd, planning.Warnings);
    }

    // By hand: talk of 7 min cut to 4 makes practice 21 min: 60 + 90 k ≤ 1,260 − 25, k ≤ 13; drawn out to 10 it is 15 min: k ≤ 9.
    [Theory]
    [InlineData(4, 14)]
    [InlineData(7, 12)]
    [InlineData(10, 10)]
    public void Talk_LongerOrShorter_IsMadeUpForByPractice(double talkMin, int tries)
    {
        var planning = Of(new() { TalkMin = talkMin });
        Assert.Equal((tries, talkMin * 60, 1800.0), (planning.Outlook.FewestTrials, planning.TalkS, planning.EndS));
        Assert.Equal(35 * 60, planning.Spans.Sum(s => s.DurationS), 1e-6);
    }

    [Fact]
    public void Talk_OfTheWholeLesson_LeavesNoPractice()
    {
        var planning = Of(new() { TalkMin = 120 });
        Assert.Equal([PlanningWarning.NoPractice], planning.Warnings);
        Assert.DoesNotContain(planning.Spans, s => s.Kind == PhaseKind.Activity);
    }

    // By hand: 2 of 10 min of practice become talk right before it, 1.5 in the first of two parts and .5 in the second by their shares.
    [Fact]
    public void Talk_WhereNoneIsPlanned_ComesBeforePractice()
    {
        LessonPhase[] phases = [new(PhaseKind.Management, 3, ""), new(PhaseKind.Activity, 6, ""), new(PhaseKind.Transition, 1, ""), new(PhaseKind.Activity, 2, "again")];
        var planning = LessonPlanning.Of(PlannedLesson.Of(phases: phases), null, new() { TalkMin = 2 });
        Assert.Equal(
            [(PhaseKind.Management, 180), (PhaseKind.Instruction, 120), (PhaseKind.Activity, 270), (PhaseKind.Transition, 60), (PhaseKind.Activity, 90)],
            planning.Spans.Select(s => (s.Kind, (int)Math.Round(s.DurationS))));
        Assert.Equal("again", planning.Spans[^1].Note);
    }

    // By hand: 14 at 10 mats, two on four of them; (1,080 − 60) / 2 = 510 s at the mats: 30 + 60 k ≤ 485, k ≤ 7, and alone 40 k ≤ 485, k ≤ 12.
    [Fact]
    public void Stations_OneWithoutMats_HalvesTheClassAndTheTime()
    {
        var planning = Of(new() { SideStationCount = 1, ChangeS = 60 });
        Assert.Equal((8, 13), (planning.Outlook.FewestTrials, planning.Outlook.MostTrials));
        Assert.Equal(2, planning.PupilsAMat);
        // As many pupils a mat are fewer mats then.
        Assert.Equal(7, Of(new() { SideStationCount = 1, PupilsAMat = 2 }).Plan.MatCount);
    }

    [Fact]
    public void Roles_MoreThanAGroupHas_AreSaid()
    {
        Assert.Contains(PlanningWarning.TooFewForRoles, Of(new() { PartnersATurn = 1, ObserversATurn = 1 }).Warnings);
        Assert.Contains(PlanningWarning.NobodyToRecord, Of(new() { MatCount = 28, RecordedBy = Recording.Observer }).Warnings);
        Assert.Contains(PlanningWarning.EmptyPlaces, Of(new() { PerformersAMat = 4 }).Warnings);
        Assert.Equal([PlanningWarning.MoreMatsThanPlanned], Of(new() { MatCount = 28 }).Warnings);
    }

    // What is proposed can be tried by a press: the same plan comes out of it, to the second.
    [Fact]
    public void ChoiceOf_AnyChangeProposed_GivesWhatWasPromised() => Gen.Select(
        Gen.Int[4, 34], Gen.Int[1, 14], Gen.Int[1, 4], Gen.Int[1, 6], Gen.Int[0, 2], Gen.Double[0, 10], Gen.Bool).Sample(
        (pupils, mats, sets, trials, stations, talk, isEach) =>
        {
            var choice = new PlanningChoice { MatCount = isEach ? null : mats, PupilsAMat = isEach ? 1 + mats % 4 : null, SideStationCount = stations, TalkMin = Math.Round(talk) };
            var planning = Of(choice, pupils, sets, trials);
            foreach (var change in planning.More.Single.Concat(planning.More.Pairs))
            {
                var tried = Of(planning.ChoiceOf(change), pupils, sets, trials);
                Assert.True(planning.ChoiceOf(change).IsWithin);
                Assert.Equal(change.Outlook.FewestTrials, tried.Outlook.FewestTrials);
                Assert.Equal(change.Outlook.WaitingFraction, tried.Outlook.WaitingFraction, 1e-6);
                Assert.Equal(change.Plan.TalkS, tried.Plan.TalkS, 1e-6);
                Assert.Equal(change.Plan with { TalkS = 0, LessonS = 1 }, tried.Plan with { TalkS = 0, LessonS = 1 });
            }
        },
        iter: 25, threads: 1);
}
