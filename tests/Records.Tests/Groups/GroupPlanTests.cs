using Slantwise.Records.Groups;
using Slantwise.Records.Tests.Planning;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupPlanTests
{
    private static readonly GroupRoster Four = GroupLesson.Roster(4);

    private static GroupPlan Pairs() => new()
    {
        Groups = [new([Four.Of("P1"), Four.Of("P2")], [Four.Of("P1")], [1]), new([Four.Of("P3"), Four.Of("P4")], [], [2])],
    };

    // By hand: 28 in groups of up to 4 are 7 groups, 29 are 8; never more groups than pupils.
    [Theory]
    [InlineData(true, 4, 28, 7)]
    [InlineData(true, 4, 29, 8)]
    [InlineData(false, 6, 28, 6)]
    [InlineData(false, 6, 4, 4)]
    [InlineData(true, 1, 60, 30)]
    [InlineData(false, 3, 0, 1)]
    public void GroupsFor_SizeOrNumber_GivesTheGroups(bool isByPupils, int count, int pupils, int expected) =>
        Assert.Equal(expected, new GroupSizing(isByPupils, count).GroupsFor(pupils));

    [Fact]
    public void Moved_ALockedPupil_TakesTheLockAlong()
    {
        var moved = Pairs().Moved(Four.Of("P1"), 1);
        Assert.Equal("P2 | P1 P3 P4", moved.Shown(Four));
        Assert.True(moved.IsLocked(Four.Of("P1")));
        Assert.Empty(moved.Groups[0].LockedPupilIds);
        Assert.Throws<ArgumentOutOfRangeException>(() => moved.Moved(Four.Of("P1"), 2));
    }

    [Fact]
    public void Moved_SomebodyInNoGroup_IsPutIn()
    {
        var plan = Pairs() with { Groups = [new([Four.Of("P1")], [], []), new([], [], [])] };
        Assert.Equal("P1 | P3", plan.Moved(Four.Of("P3"), 1).Shown(Four));
    }

    [Fact]
    public void WithWish_AboutTheSameTwo_TakesItsPlace()
    {
        var (one, two) = (Four.Of("P1"), Four.Of("P2"));
        var plan = Pairs().WithWish(new(true, one, two)).WithWish(new(false, two, one)).WithWish(new(true, one, one));
        Assert.Equal([new PupilWish(false, two, one)], plan.Wishes);
        Assert.Empty(plan.WithoutWish(new(false, two, one)).Wishes);
    }

    [Fact]
    public void WithKnown_ThatSaysNothing_IsNotKept()
    {
        var one = Four.Of("P1");
        var plan = Pairs().WithKnown(new(one, PupilExperience.Much, false)).WithKnown(new(one, PupilExperience.Much, true));
        Assert.Equal([new KnownExperience(one, PupilExperience.Much, true)], plan.Known);
        Assert.Empty(plan.WithKnown(new(one, null, false)).Known);
    }

    [Fact]
    public void WithLock_AndBack_IsTheSamePlanAgain()
    {
        var three = Four.Of("P3");
        var locked = Pairs().WithLock(three, true);
        Assert.Equal([three], locked.Groups[1].LockedPupilIds);
        Assert.Empty(locked.WithLock(three, false).Groups[1].LockedPupilIds);
        Assert.Same(locked, locked.WithLock(Guid.NewGuid(), true));
    }

    [Fact]
    public void For_ThoseWhoCameAndLeft_NamesOnlyWhoIsThere()
    {
        var (gone, absent) = (Guid.NewGuid(), Four.Of("P4"));
        var plan = Pairs() with
        {
            Groups = [new([Four.Of("P1"), gone], [Four.Of("P1"), gone], [1]), new([Four.Of("P3"), absent], [absent], [2])],
            Wishes = [new(true, Four.Of("P1"), gone), new(true, Four.Of("P1"), absent)],
            Known = [new(gone, PupilExperience.New, false), new(absent, PupilExperience.New, false)],
        };
        var fitted = plan.For(GroupRoster.Of(PlannedLesson.Of(4).Without(4), leavesOutAbsent: true));
        Assert.Equal("P1 | P3", fitted.Shown(Four));
        Assert.Equal([Four.Of("P1")], fitted.Groups.SelectMany(g => g.LockedPupilIds));
        // Who is only absent comes back: what was wished and said of them is kept.
        Assert.Equal([new PupilWish(true, Four.Of("P1"), absent)], fitted.Wishes);
        Assert.Equal([absent], fitted.Known.Select(k => k.PupilId));
    }

    [Fact]
    public void Roster_WithSomebodyAbsent_LeavesThemOutOnlyOnRequest()
    {
        var record = PlannedLesson.Of(4).Without(2);
        Assert.Equal(4, GroupRoster.Of(record, false).Pupils.Count);
        Assert.Equal(["P1", "P3", "P4"], GroupRoster.Of(record, true).Pupils.Select(p => p.Label));
        Assert.Equal(["P2"], GroupRoster.Of(record, false).Absent.Select(p => p.Label));
    }
}
