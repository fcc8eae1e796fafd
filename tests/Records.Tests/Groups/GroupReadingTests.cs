using System.Globalization;
using CsCheck;
using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupReadingTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es-ES");

    // By hand: one and two together, two and three together, one and three apart: any two can be met, all three cannot. What was wished last is left out.
    [Fact]
    public void Of_ThreeWishesThatContradict_NamesTheOneLeftOutAndTheOthers()
    {
        var roster = GroupLesson.Roster(6);
        var made = Made(roster, new GroupPlan { Sizing = new(false, 2) }, (true, "P1", "P2"), (true, "P2", "P3"), (false, "P1", "P3"));
        var note = Assert.Single(GroupReading.Of(roster, made, English).Notes);
        Assert.Equal(GroupNoteKind.WishNotMet, note.Kind);
        Assert.Equal("Not met: P1 and P3 apart. It cannot be met beside this: P1 and P2 together; P2 and P3 together.", note.Sentence);
        Assert.StartsWith("No se cumple: P1 y P3 en equipos distintos. No se puede cumplir junto a esto: P1 y P2 en el mismo equipo; ", Assert.Single(GroupReading.Of(roster, made, Spanish).Notes).Sentence);
    }

    // By hand: three do not fit into groups of two; in a group of one nobody is together.
    [Fact]
    public void Of_WishesAgainstTheSizes_SayThatSizesStandAgainstThem()
    {
        var roster = GroupLesson.Roster(4);
        var pairs = GroupReading.Of(roster, Made(roster, new GroupPlan { Sizing = new(false, 2) }, (true, "P1", "P2"), (true, "P2", "P3")), English);
        Assert.Equal("Not met: P2 and P3 together. It cannot be met beside this: P1 and P2 together.", Assert.Single(pairs.Notes).Sentence);
        var single = GroupReading.Of(roster, Made(roster, new GroupPlan { Sizing = new(true, 1) }, (true, "P1", "P2")), English);
        Assert.Equal("Not met: P1 and P2 together. With these group sizes and fixed places alone it cannot be met.", Assert.Single(single.Notes).Sentence);
    }

    [Fact]
    public void Of_AWishBrokenByHand_SaysThatNothingStandsAgainstIt()
    {
        var roster = GroupLesson.Roster(6);
        var made = Made(roster, new GroupPlan { Sizing = new(false, 2) }, (true, "P1", "P2"));
        Assert.Empty(GroupReading.Of(roster, made, English).Notes);
        var reading = GroupReading.Of(roster, made.Moved(roster.Of("P1"), 1 - made.GroupOf(roster.Of("P1"))!.Value), English);
        Assert.Equal([GroupNoteKind.WishNotMet, GroupNoteKind.UnevenSize, GroupNoteKind.UnevenSize], reading.Notes.Select(n => n.Kind));
        Assert.Equal("Not met: P1 and P2 together. Nothing stands against it: groups made anew would meet it.", reading.Notes[0].Sentence);
        Assert.Equal("6 pupils in 2 groups, 2 to 4 in each.", reading.Sizes);
    }

    [Fact]
    public void Of_FewerSupportersThanGroups_SaysHowManyMaySupport()
    {
        var roster = GroupLesson.Roster(6);
        var plan = new GroupPlan { Sizing = new(false, 3), NeedsSupporter = true }.WithKnown(new(roster.Of("P4"), null, true));
        var reading = GroupReading.Of(roster, GroupMaking.Of(roster, plan, null).Plan, English);
        Assert.Equal("Nobody who may support is in groups 2, 3. Of those here 1 may support; 3 groups ask for somebody.", Assert.Single(reading.Notes).Sentence);
    }

    [Fact]
    public void Of_SomebodyWhoCameSince_SaysWhoIsInNoGroup()
    {
        var made = GroupMaking.Of(GroupLesson.Roster(4), new GroupPlan { Sizing = new(false, 2) }, null).Plan;
        var reading = GroupReading.Of(GroupLesson.Roster(5), made, English);
        Assert.Equal("In no group yet: P5.", reading.Notes[0].Sentence);
        Assert.Equal("4 pupils in 2 groups, 2 in each.", reading.Sizes);
    }

    [Fact]
    public void WhyNone_MoreFixedThanAGroupHolds_SaysWhatToDo()
    {
        var roster = GroupLesson.Roster(4);
        Guid[] three = [roster.Of("P1"), roster.Of("P2"), roster.Of("P3")];
        var making = GroupMaking.Of(roster, new GroupPlan { Sizing = new(false, 2), Groups = [new(three, three, []), new([], [], [])] }, null);
        Assert.Equal(
            "No groups were made: 4 pupils in 2 groups of even size cannot keep everybody who is fixed where they are. Free somebody, or ask for another number of groups.",
            GroupReading.WhyNone(making, English)!.Sentence);
        Assert.Null(GroupReading.WhyNone(GroupMaking.Of(roster, new GroupPlan(), null), English));
    }

    // By hand: of all the difference nothing lies between the groups when each has one of both, all of it when each has one kind.
    [Theory]
    [InlineData("P1 P3 | P2 P4", "The groups are much alike, each of them mixed in what pupils have done before. Something is said of 4 of 4 here.")]
    [InlineData("P1 P2 | P3 P4", "Within a group pupils have done much the same before. Something is said of 4 of 4 here.")]
    public void Of_GroupsByHand_SaysHowMixedInWordsAlone(string groups, string expected)
    {
        var roster = GroupLesson.Roster(4);
        var plan = new GroupPlan
        {
            Groups = [.. groups.Split(" | ").Select(g => new LessonGroup([.. g.Split(' ').Select(roster.Of)], [], []))],
            Known = [.. roster.Pupils.Select((p, i) => new KnownExperience(p.Id, i < 2 ? PupilExperience.New : PupilExperience.Much, false))],
        };
        Assert.Equal(expected, GroupReading.Of(roster, plan, English).Mixing);
    }

    // Of each wish that is not met something is said, in both languages, with every gap filled; and nothing says of a single pupil what they have done before.
    [Fact]
    public void Of_AnyPlanMovedByHand_SaysEachUnmetWishInBothLanguages() => Gen.Select(
        Gen.Int[2, 9], Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Bool).List[0, 10], Gen.Int[1, 4], Gen.Bool, Gen.Int[0, 8], Gen.Int[0, 3]).Sample(
        (pupils, wishes, groups, needs, moved, to) =>
        {
            var roster = GroupLesson.Roster(pupils);
            var plan = wishes.Aggregate(
                new GroupPlan { Sizing = new(false, groups), NeedsSupporter = needs, Known = [.. roster.Pupils.Select((p, i) => new KnownExperience(p.Id, (PupilExperience)(1 + i % 3), i == 0))] },
                (p, w) => p.WithWish(new(w.Item3, roster.Pupils[w.Item1 % pupils].Id, roster.Pupils[w.Item2 % pupils].Id)));
            var made = GroupMaking.Of(roster, plan, null).Plan;
            made = made.Moved(roster.Pupils[moved % pupils].Id, to % made.Groups.Count);
            var asking = GroupAsking.AsItStands(roster, made);
            var unmet = GroupCheck.Of(asking.Request, asking.GroupOf(made)).UnmetWishes;
            foreach (var culture in new[] { English, Spanish })
            {
                var reading = GroupReading.Of(roster, made, culture);
                Assert.Equal(unmet.Count(w => w < asking.Wishes.Count), reading.Notes.Count(n => n.Kind == GroupNoteKind.WishNotMet));
                Assert.Equal(unmet.Any(w => w >= asking.Wishes.Count), reading.Notes.Any(n => n.Kind == GroupNoteKind.NoSupporter));
                Assert.All(reading.Notes, n => Assert.DoesNotMatch(@"[{}]|new to|often|nuev[oa] en|experien", n.Sentence));
                Assert.DoesNotMatch("P[0-9]", reading.Mixing + reading.Sizes);
            }
        },
        iter: 80, threads: 1);

    private static GroupPlan Made(GroupRoster roster, GroupPlan plan, params (bool IsTogether, string First, string Second)[] wishes) => GroupMaking.Of(
        roster, wishes.Aggregate(plan, (p, w) => p.WithWish(new(w.IsTogether, roster.Of(w.First), roster.Of(w.Second)))), null).Plan;
}
