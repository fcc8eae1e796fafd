using CsCheck;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Engines.Planning.Practice.Changes;

namespace Slantwise.Engines.Tests.Planning.Practice.Changes;

public sealed class MoreTrialsTests
{
    [Fact]
    public void Of_WritingOnTheMat_NamesObserverMatsAndTalk()
    {
        // By hand: 30 pupils, 3 a mat, 45 s a turn, 18 min less 6 of talk: 16 turns a mat, 5 each. An observer who writes: 24 turns, 8 each. 15 mats: 2 a mat, 8 each; 11 to 14 mats
        // still have a group of 3. Talk: 7 each needs 20 turns and 25 s to the end of the
        // last action, 925 s, so talk of at most 155 s: 205 s less at least, 210 in steps of 30 s.
        var plan = PracticeOutlookTests.Plain with { PupilCount = 30, RecordS = 15, RecordedBy = Recording.PerformerOnMat, TalkS = 360 };
        var more = MoreTrials.Of(plan, new(16, 60, 1, 0, 1, true), 2);
        Assert.Equal(5, more.Before.FewestTrials);
        Assert.Equal(3, more.Single.Count);
        var (mats, observer, talk) = (more.Single[0], more.Single[1], more.Single[2]);
        Assert.Equal((5, 3), (mats.AddedMats, mats.GainTrials));
        Assert.Equal((true, 3), (observer.IsObserverNew, observer.GainTrials));
        Assert.Equal((210, 2), (talk.CutTalkS, talk.GainTrials));
        Assert.Empty(more.Pairs);
    }

    [Fact]
    public void Of_NothingEnoughAlone_NamesPairs()
    {
        var plan = PracticeOutlookTests.Plain with { PupilCount = 30, TalkS = 360, SetCount = 3, TrialsASet = 2, BetweenSetsS = 60 };
        // By hand: 600 s at the mats, turns of 30 s: 6 each. 8 each needs 720 s: two sets less give 120 and would do; one set less and 60 s less talk do together.
        var more = MoreTrials.Of(plan, new(10, 300, 2, 0, 1, false), 2);
        Assert.Equal(6, more.Before.FewestTrials);
        var pair = Assert.Single(more.Pairs);
        Assert.Equal((1, 60), (pair.CutSets, pair.CutTalkS));
        Assert.Equal(2, pair.GainTrials);
        Assert.Equal(2, pair.KindCount);
        Assert.Equal(6, pair.Plan.PlannedTrials);
    }

    [Fact]
    public void Of_AnyPlan_GainsAreThoseOfThePlansThemselves() => PracticeOutlookTests.Plans.Sample(plan =>
    {
        var more = MoreTrials.Of(plan, new(plan.MatCount + 6, 100, 1, plan.SideStationCount + 1, plan.TrialsATurn + 2, true), 2);
        foreach (var change in more.Single.Concat(more.Pairs))
        {
            var outlook = PracticeOutlook.Of(change.Plan);
            Assert.Equal(outlook, change.Outlook);
            Assert.Equal(outlook.FewestTrials - PracticeOutlook.Of(plan).FewestTrials, change.GainTrials);
        }
        Assert.All(more.Single, c => Assert.Equal(1, c.KindCount));
        Assert.All(more.Pairs, c => Assert.True(c.KindCount == 2 && c.GainTrials >= 2));
        // The plain second version for mats: one more at a time until it is enough.
        var needed = Enumerable.Range(1, 6).FirstOrDefault(a => PracticeOutlook.Of(plan with { MatCount = plan.MatCount + a }).FewestTrials >= more.Before.FewestTrials + 2);
        var named = more.Single.FirstOrDefault(c => c.AddedMats > 0 && c.GainTrials >= 2)?.AddedMats ?? 0;
        Assert.Equal(needed, named);
    }, iter: 60);

    [Fact]
    public void Of_LimitsOnTheWrongSide_Throws()
    {
        var plan = PracticeOutlookTests.Plain;
        Assert.Throws<ArgumentOutOfRangeException>(() => MoreTrials.Of(plan, new(9, 0, 1, 0, 1, false), 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => MoreTrials.Of(plan, new(10, 1, 1, 0, 1, false), 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => MoreTrials.Of(plan, new(10, 0, 1, 0, 1, false), 0));
    }
}
