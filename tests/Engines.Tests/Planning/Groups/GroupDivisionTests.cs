using CsCheck;
using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Engines.Tests.Planning.Groups;

public sealed class GroupDivisionTests
{
    [Fact]
    public void Of_SmallClasses_AgreesWithAllDivisionsTriedOut() => SmallRequests.Sample(request =>
    {
        var all = AllDivisions(request).ToList();
        var answer = GroupDivision.Of(request);
        Assert.True(answer.IsFewestProved);
        if (all.Count == 0)
        {
            Assert.Null(answer.GroupOf);
            Assert.Empty(Assert.Single(answer.Conflicts).Wishes);
            return;
        }
        var met = all.Max(d => MetCount(request, d));
        Assert.Equal(request.Wishes.Count - met, answer.UnmetWishes.Count);

        // Among the divisions that meet the same wishes none is nearer to the goal.
        if (request.Goal == GroupGoal.Any) return;
        Assert.True(answer.IsBestProved);
        var kept = Enumerable.Range(0, request.Wishes.Count).Except(answer.UnmetWishes).ToList();
        var shares = all.Where(d => kept.All(w => IsMet(request, request.Wishes[w], d))).Select(d => BetweenByHand(request, d)).ToList();
        var best = request.Goal == GroupGoal.Mix ? shares.Min() : shares.Max();
        if (best is null) Assert.Null(answer.BetweenFraction);
        else Assert.Equal(best.Value, answer.BetweenFraction!.Value, 1e-9);
    }, iter: 250);

    [Fact]
    public void Of_SmallClasses_ConflictsAreSmallestSets() => SmallRequests.Sample(request =>
    {
        var all = AllDivisions(request).ToList();
        bool CanMeet(IEnumerable<int> wishes) => all.Any(d => wishes.All(w => IsMet(request, request.Wishes[w], d)));
        var answer = GroupDivision.Of(request);
        Assert.All(answer.Conflicts, c => Assert.True(c.IsProved));
        foreach (var conflict in answer.Conflicts.Select(c => c.Wishes))
        {
            Assert.False(CanMeet(conflict));
            Assert.All(conflict, w => Assert.True(CanMeet(conflict.Where(o => o != w))));
            Assert.True(conflict.Count == 0 || conflict.Intersect(answer.UnmetWishes).Any());
        }
        Assert.Equal(answer.UnmetWishes.Count > 0, answer.Conflicts.Any(c => c.Wishes.Count > 0));
    }, iter: 150);

    [Fact]
    public void Of_WholeClasses_KeepLocksAndSizesAndTheSeed() => LargeRequests.Sample(request =>
    {
        var answer = GroupDivision.Of(request);
        if (answer.GroupOf is null) return;
        var check = GroupCheck.Of(request, answer.GroupOf);
        Assert.Empty(check.BrokenLocks);
        Assert.Empty(check.WrongSizes);
        Assert.Equal(check.UnmetWishes, answer.UnmetWishes);
        // What was left out hits every conflict.
        Assert.All(answer.Conflicts, c => Assert.NotEmpty(c.Wishes.Intersect(answer.UnmetWishes)));
        Assert.Equal(answer.GroupOf, GroupDivision.Of(request).GroupOf);
    }, iter: 25);

    [Fact]
    public void Of_ThreeWhoContradictEachOther_NamesThemAndLeavesOneOut()
    {
        // By hand: 0 with 1, 1 with 2, 0 not with 2; and 3 beside 4, which disturbs nobody.
        var answer = GroupDivision.Of(new()
        {
            Pupils = new GroupPupil[6], Sizes = GroupSize.Even(6, 2),
            Wishes = [GroupWish.Together(0, 1), GroupWish.Together(1, 2), GroupWish.Together(3, 4), GroupWish.Apart(0, 2)],
        });
        Assert.Equal([0, 1, 3], Assert.Single(answer.Conflicts).Wishes);
        Assert.Single(answer.UnmetWishes);
        Assert.DoesNotContain(2, answer.UnmetWishes);
    }

    [Fact]
    public void Of_FourApartInThreeGroups_NamesTheSix()
    {
        var pairs = from a in Enumerable.Range(0, 4) from b in Enumerable.Range(a + 1, 3 - a) select GroupWish.Apart(a, b);
        var answer = GroupDivision.Of(new() { Pupils = new GroupPupil[30], Sizes = GroupSize.Even(30, 3), Wishes = [.. pairs] });
        Assert.Equal(6, Assert.Single(answer.Conflicts).Wishes.Count);
        Assert.Single(answer.UnmetWishes);
    }

    [Fact]
    public void Of_TwoSupportersForThreeGroups_NamesTheThreeWishes()
    {
        var answer = GroupDivision.Of(new()
        {
            Pupils = [.. Enumerable.Range(0, 9).Select(i => new GroupPupil(null, i < 2))], Sizes = GroupSize.Even(9, 3),
            Wishes = [.. Enumerable.Range(0, 3).Select(GroupWish.SupporterIn)],
        });
        Assert.Equal([0, 1, 2], Assert.Single(answer.Conflicts).Wishes);
        Assert.Single(answer.UnmetWishes);
    }

    [Fact]
    public void Of_SevenSupportersForTenGroups_NamesOneSetAndLeavesThreeOut()
    {
        // By hand: no eight of the ten groups can all have one; which three go without is all the same, and they are the last.
        var answer = GroupDivision.Of(new()
        {
            Pupils = [.. Enumerable.Range(0, 30).Select(i => new GroupPupil(null, i < 7))], Sizes = GroupSize.Even(30, 10),
            Wishes = [.. Enumerable.Range(0, 10).Select(GroupWish.SupporterIn)],
        });
        Assert.Equal(8, Assert.Single(answer.Conflicts).Wishes.Count);
        Assert.Equal([7, 8, 9], answer.UnmetWishes);
        Assert.True(answer.IsFewestProved);
    }

    [Fact]
    public void Of_MoreLocksThanPlaces_HasNoGroups()
    {
        var answer = GroupDivision.Of(new() { Pupils = new GroupPupil[4], Sizes = GroupSize.Even(4, 2), Locks = [new(0, 0), new(1, 0), new(2, 0)] });
        Assert.Null(answer.GroupOf);
        Assert.Empty(Assert.Single(answer.Conflicts).Wishes);
    }

    [Fact]
    public void Of_TwelveInPairs_MatchesNeighboursAndMixesEnds()
    {
        // By hand: experience 0, .1, ..., 1.1 / 1.1: matched pairs are neighbours; mixed pairs add up to the same.
        var pupils = Enumerable.Range(0, 12).Select(i => new GroupPupil(i / 11.0)).ToArray();
        var matched = GroupDivision.Of(new() { Pupils = pupils, Sizes = GroupSize.Even(12, 6), Goal = GroupGoal.Match });
        for (var i = 0; i < 12; i += 2) Assert.Equal(matched.GroupOf![i], matched.GroupOf[i + 1]);
        var mixed = GroupDivision.Of(new() { Pupils = pupils, Sizes = GroupSize.Even(12, 6), Goal = GroupGoal.Mix });
        for (var i = 0; i < 12; i++) Assert.Equal(mixed.GroupOf![i], mixed.GroupOf[11 - i]);
        Assert.True(matched.IsBestProved && mixed.IsBestProved);
        Assert.Equal(0, mixed.BetweenFraction!.Value, 1e-12);
    }

    [Fact]
    public void Of_ThirtyInTens_MatchIsTheSortedOrder()
    {
        // Without wishes the least differences within groups of equal size are those of neighbours: a known optimum that the swaps must find.
        var draws = new Random(4);
        var pupils = Enumerable.Range(0, 30).Select(_ => new GroupPupil(draws.NextDouble())).ToArray();
        var request = new GroupRequest { Pupils = pupils, Sizes = GroupSize.Even(30, 10), Goal = GroupGoal.Match };
        var order = Enumerable.Range(0, 30).OrderBy(i => pupils[i].ExperienceFraction).ToArray();
        var sorted = new int[30];
        for (var rank = 0; rank < 30; rank++) sorted[order[rank]] = rank / 3;
        Assert.Equal(GroupCheck.Of(request, sorted).BetweenFraction!.Value, GroupDivision.Of(request).BetweenFraction!.Value, 1e-9);
    }

    [Fact]
    public void Of_AnotherSeed_UsuallyGivesOtherGroups()
    {
        var request = new GroupRequest { Pupils = new GroupPupil[28], Sizes = GroupSize.Even(28, 10) };
        Assert.NotEqual(GroupDivision.Of(request with { Seed = 1 }).GroupOf, GroupDivision.Of(request with { Seed = 2 }).GroupOf);
    }

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        var request = new GroupRequest { Pupils = new GroupPupil[4], Sizes = GroupSize.Even(4, 2) };
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Sizes = [] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Sizes = [new(2, 1)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Pupils = [new(1.1)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Wishes = [GroupWish.Together(0, 4)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Wishes = [GroupWish.SupporterIn(2)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupDivision.Of(request with { Locks = [new(0, 2)] }));
        Assert.Throws<ArgumentException>(() => GroupDivision.Of(request with { Wishes = [GroupWish.Apart(1, 1)] }));
    }

    private static IEnumerable<int[]> AllDivisions(GroupRequest request)
    {
        var (n, g) = (request.Pupils.Count, request.Sizes.Count);
        for (var code = 0; code < (int)Math.Pow(g, n); code++)
        {
            var (division, rest) = (new int[n], code);
            for (var p = 0; p < n; p++, rest /= g) division[p] = rest % g;
            var isKept = request.Locks.All(l => division[l.Pupil] == l.Group)
                && Enumerable.Range(0, g).All(k => division.Count(d => d == k) >= request.Sizes[k].Least && division.Count(d => d == k) <= request.Sizes[k].Most);
            if (isKept) yield return division;
        }
    }

    private static int MetCount(GroupRequest request, int[] division) => request.Wishes.Count(w => IsMet(request, w, division));

    private static bool IsMet(GroupRequest request, GroupWish wish, int[] division) => wish.Kind switch
    {
        GroupWishKind.Together => division[wish.First] == division[wish.Second],
        GroupWishKind.Apart => division[wish.First] != division[wish.Second],
        _ => Enumerable.Range(0, division.Length).Any(p => division[p] == wish.First && request.Pupils[p].MaySupport),
    };

    // The plain second version: between = Σ n (mean of the group − mean of all)², over the same with each pupil a group.
    private static double? BetweenByHand(GroupRequest request, int[] division)
    {
        var known = Enumerable.Range(0, division.Length).Where(p => request.Pupils[p].ExperienceFraction is not null).ToList();
        if (known.Count == 0) return null;
        double Of(int p) => request.Pupils[p].ExperienceFraction!.Value;
        var mean = known.Average(Of);
        var total = known.Sum(p => (Of(p) - mean) * (Of(p) - mean));
        return total < 1e-12 ? null : known.GroupBy(p => division[p]).Sum(g => g.Count() * Math.Pow(g.Average(Of) - mean, 2)) / total;
    }

    private static Gen<GroupRequest> SmallRequests { get; } = Requests(Gen.Int[2, 9], Gen.Int[1, 3], 8);

    private static Gen<GroupRequest> LargeRequests { get; } = Requests(Gen.Int[20, 34], Gen.Int[3, 12], 30);

    private static Gen<GroupRequest> Requests(Gen<int> pupils, Gen<int> groups, int wishes) =>
        from n in pupils
        from g in groups
        from people in Gen.Select(Gen.Int[0, 12], Gen.Bool).Array[n]
        from loose in Gen.Int[0, 2]
        from pairs in Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, n - 2], Gen.Int[0, 4]).Array[0, wishes]
        from places in Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, g - 1]).Array[0, 2]
        from goal in Gen.Int[0, 2]
        from seed in Gen.Int[0, 1000]
        select new GroupRequest
        {
            Pupils = [.. people.Select(p => new GroupPupil(p.Item1 > 10 ? null : p.Item1 / 10.0, p.Item2))],
            Sizes = [.. GroupSize.Even(n, g).Select(s => new GroupSize(Math.Max(0, s.Least - (loose == 2 ? 1 : 0)), s.Most + (loose > 0 ? 1 : 0)))],
            Wishes = [.. pairs.Select(p => p.Item3 switch
            {
                0 or 1 => GroupWish.Together(p.Item1, p.Item2 + (p.Item2 >= p.Item1 ? 1 : 0)),
                2 or 3 => GroupWish.Apart(p.Item1, p.Item2 + (p.Item2 >= p.Item1 ? 1 : 0)),
                _ => GroupWish.SupporterIn(p.Item1 % g),
            })],
            Locks = [.. places.Select(p => new GroupLock(p.Item1, p.Item2))],
            Goal = (GroupGoal)goal,
            Seed = (ulong)seed,
        };
}
