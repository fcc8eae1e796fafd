using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tests.Planning;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupStartTests
{
    private static readonly LessonRecord Record = PlannedLesson.Of(4);
    private static readonly GroupRoster Roster = GroupRoster.Of(Record, false);

    private static Lesson LessonOn(int days, int number, Guid? classId = null) =>
        Record.Lesson with { Id = new Guid(number, 1, 1, new byte[8]), Date = Record.Lesson.Date.AddDays(days), ClassId = classId ?? Record.Class.Id };

    private static LessonGroups PlanOf(Lesson lesson, GroupPlan plan) => new() { SchoolId = lesson.SchoolId, LessonId = lesson.Id, Plan = plan };

    private static readonly GroupPlan Earlier = new()
    {
        Groups = [new([Roster.Of("P1")], [Roster.Of("P1")], [1])], Goal = GroupGoal.Mix, NeedsSupporter = true, Seed = 3, Sizing = new(false, 2),
        Wishes = [new(true, Roster.Of("P1"), Roster.Of("P2")), new(true, Roster.Of("P1"), Guid.NewGuid())], Known = [new(Roster.Of("P3"), PupilExperience.Some, true)],
    };

    [Fact]
    public void Of_TheNextLesson_BeginsWithWishesAndWhatIsKnownButNotWithTheGroups()
    {
        var (before, later, other) = (LessonOn(-7, 1), LessonOn(7, 2), LessonOn(-1, 3, Guid.NewGuid()));
        var start = GroupStart.Of(
            Record, [PlanOf(before, Earlier), PlanOf(later, new GroupPlan()), PlanOf(other, new GroupPlan())], [before, later, other, LessonOn(-2, 4), Record.Lesson]);
        Assert.Equal((false, before.Id), (start.IsKept, start.From!.Id));
        Assert.Empty(start.Plan.Groups);
        Assert.Equal((GroupGoal.Mix, true, new GroupSizing(false, 2)), (start.Plan.Goal, start.Plan.NeedsSupporter, start.Plan.Sizing));
        Assert.Equal([new PupilWish(true, Roster.Of("P1"), Roster.Of("P2"))], start.Plan.Wishes);
        Assert.Equal(Earlier.Known, start.Plan.Known);
    }

    [Fact]
    public void Of_ALessonWithAPlan_BeginsWithItsOwn()
    {
        var start = GroupStart.Of(Record, [PlanOf(Record.Lesson, Earlier), PlanOf(LessonOn(-7, 1), new GroupPlan())], [Record.Lesson, LessonOn(-7, 1)]);
        Assert.True(start.IsKept);
        Assert.Null(start.From);
        Assert.Equal((3, 1), (start.Plan.Seed, start.Plan.Groups.Count));
    }

    [Fact]
    public void Of_AClassWithoutAny_BeginsWithTheUsualAndAlwaysTheSameSeed()
    {
        var (start, again) = (GroupStart.Of(Record, [], [Record.Lesson]), GroupStart.Of(Record, [], [Record.Lesson]));
        Assert.Equal((false, null as Lesson, GroupSizing.Usual), (start.IsKept, start.From, start.Plan.Sizing));
        Assert.Equal(start.Plan.Seed, again.Plan.Seed);
        Assert.InRange(start.Plan.Seed, 0, 999_999);
    }
}
