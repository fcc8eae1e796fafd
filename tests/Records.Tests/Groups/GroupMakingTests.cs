using CsCheck;
using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupMakingTests
{
    private static readonly Gen<(GroupRoster Roster, GroupPlan Plan)> Plans =
        from pupils in Gen.Int[2, 14]
        let roster = GroupLesson.Roster(pupils)
        from pair in Gen.Select(Gen.Int[0, pupils - 1], Gen.Int[0, pupils - 1], Gen.Bool).List[0, 6]
        from known in Gen.Select(Gen.Int[0, 3], Gen.Bool).List[pupils, pupils]
        from count in Gen.Int[1, 6]
        from isByPupils in Gen.Bool
        from goal in Gen.Int[0, 2]
        from needs in Gen.Bool
        from seed in Gen.Int[0, 999_999]
        select (roster, known.Select((k, i) => new KnownExperience(roster.Pupils[i].Id, k.Item1 == 0 ? null : (PupilExperience)k.Item1, k.Item2))
            .Aggregate(
                pair.Aggregate(
                    new GroupPlan { Sizing = new(isByPupils, count), Goal = (GroupGoal)goal, NeedsSupporter = needs, Seed = seed },
                    (plan, p) => plan.WithWish(new(p.Item3, roster.Pupils[p.Item1].Id, roster.Pupils[p.Item2].Id))),
                (plan, k) => plan.WithKnown(k)));

    [Fact]
    public void Of_AnyPlan_PutsEverybodyInOneGroupOfAnEvenSize() => Plans.Sample(
        s =>
        {
            var plan = GroupMaking.Of(s.Roster, s.Plan, 8).Plan;
            var sizes = plan.Groups.Select(g => g.PupilIds.Count).ToList();
            Assert.Equal(s.Roster.Pupils.Select(p => p.Id).Order(), plan.Groups.SelectMany(g => g.PupilIds).Order());
            Assert.Equal(s.Plan.Sizing.GroupsFor(s.Roster.Pupils.Count), sizes.Count);
            Assert.InRange(sizes.Max() - sizes.Min(), 0, 1);
        },
        iter: 60, threads: 1);

    [Fact]
    public void Of_TheSamePlanTwice_GivesTheSameGroupsWhateverPupilsAreCalled() => Plans.Sample(
        s =>
        {
            var renamed = s.Roster with { Pupils = [.. s.Roster.Pupils.Reverse().Select((p, i) => p with { DisplayName = $"Q{i}" })] };
            var made = GroupMaking.Of(s.Roster, s.Plan, 8).Plan;
            Assert.Equal(made.Groups.Select(g => g.PupilIds.Order()), GroupMaking.Of(renamed, s.Plan, 8).Plan.Groups.Select(g => g.PupilIds.Order()));
        },
        iter: 40, threads: 1);

    // The plan read back asks the same as it was made for: what the engine left out is what is not met, and no more.
    [Fact]
    public void Of_ReadBackAsItStands_KeepsWhatWasMade() => Plans.Sample(
        s =>
        {
            var making = GroupMaking.Of(s.Roster, s.Plan, null);
            var asking = GroupAsking.AsItStands(s.Roster, making.Plan);
            Assert.Equal(making.Division.GroupOf, asking.GroupOf(making.Plan));
            var check = GroupCheck.Of(asking.Request, asking.GroupOf(making.Plan));
            Assert.Equal(making.Division.UnmetWishes, check.UnmetWishes);
            Assert.Empty(check.WrongSizes);
            Assert.Empty(check.BrokenLocks);
        },
        iter: 60, threads: 1);

    [Fact]
    public void Of_MadeAnewWithAnotherSeed_LeavesWhoIsFixedWhereTheyAre() => Gen.Select(Plans, Gen.Int[1, 999_999], Gen.Bool.List[14, 14]).Sample(
        (s, seed, isFixed) =>
        {
            var made = GroupMaking.Of(s.Roster, s.Plan, 8).Plan;
            var locked = s.Roster.Pupils.Where((_, i) => isFixed[i]).Aggregate(made, (plan, p) => plan.WithLock(p.Id, true));
            var again = GroupMaking.Of(s.Roster, locked with { Seed = seed }, 8);
            Assert.True(again.IsMade);
            Assert.All(s.Roster.Pupils.Where((_, i) => isFixed[i]), p =>
            {
                Assert.Equal(made.GroupOf(p.Id), again.Plan.GroupOf(p.Id));
                Assert.True(again.Plan.IsLocked(p.Id));
            });
        },
        iter: 60, threads: 1);

    [Fact]
    public void Of_OtherSeeds_GiveOtherGroups()
    {
        var roster = GroupLesson.Roster(12);
        var plan = new GroupPlan { Sizing = new(false, 4) };
        Assert.True(Enumerable.Range(0, 5).Select(seed => GroupMaking.Of(roster, plan with { Seed = seed }, null).Plan.Shown(roster)).Distinct().Count() > 1);
    }

    // By hand: two of each kind among four are one of each in both groups when mixed, and a group of each kind when alike.
    [Theory]
    [InlineData(GroupGoal.Mix, false)]
    [InlineData(GroupGoal.Match, true)]
    public void Of_TwoNewAndTwoWhoHaveDoneItOften_AreMixedOrAlike(GroupGoal goal, bool isTogether)
    {
        var roster = GroupLesson.Roster(4);
        var plan = new[] { "P1", "P2" }.Aggregate(new GroupPlan { Sizing = new(false, 2), Goal = goal }, (p, name) => p.WithKnown(new(roster.Of(name), PupilExperience.New, false)));
        plan = new[] { "P3", "P4" }.Aggregate(plan, (p, name) => p.WithKnown(new(roster.Of(name), PupilExperience.Much, false)));
        var made = GroupMaking.Of(roster, plan, null).Plan;
        Assert.Equal(isTogether, made.GroupOf(roster.Of("P1")) == made.GroupOf(roster.Of("P2")));
    }

    [Fact]
    public void Of_AsManyGroupsAgain_KeepsTheMatsChosenByHand()
    {
        var roster = GroupLesson.Roster(6);
        var made = GroupMaking.Of(roster, new GroupPlan { Sizing = new(false, 3) }, 6).Plan;
        Assert.Equal(["1, 2", "3, 4", "5, 6"], made.Groups.Select(g => GroupMats.Text(g.MatNumbers)));
        var chosen = made.WithMats(0, [6]) with { Seed = 9 };
        Assert.Equal("6", GroupMats.Text(GroupMaking.Of(roster, chosen, 6).Plan.Groups[0].MatNumbers));
        Assert.Equal("1–3", GroupMats.Text(GroupMaking.Of(roster, chosen with { Sizing = new(false, 2) }, 6).Plan.Groups[0].MatNumbers));
    }

    [Fact]
    public void Of_MoreFixedThanAGroupHolds_MakesNoneAndChangesNothing()
    {
        var roster = GroupLesson.Roster(4);
        Guid[] three = [roster.Of("P1"), roster.Of("P2"), roster.Of("P3")];
        var plan = new GroupPlan { Sizing = new(false, 2), Groups = [new(three, three, []), new([roster.Of("P4")], [], [])] };
        var making = GroupMaking.Of(roster, plan, null);
        Assert.False(making.IsMade);
        Assert.Same(plan, making.Plan);
    }
}
