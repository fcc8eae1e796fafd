using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Bench.Planning;

/// <summary>Classes of 30 with wishes at random: two in five together, the others apart; a supporter in each group; two fixed places.</summary>
internal static class InventedWishes
{
    public static GroupRequest Of(int seed, int wishes, int groups, GroupGoal goal)
    {
        var random = new Random(1000 + seed);
        var pupils = Enumerable.Range(0, 30).Select(_ => new GroupPupil(random.Next(0, 21) / 20.0, random.NextDouble() < 0.45)).ToArray();
        var all = new List<GroupWish>();
        while (all.Count < wishes)
        {
            var (a, b) = (random.Next(30), random.Next(30));
            if (a != b) all.Add(random.NextDouble() < 0.4 ? GroupWish.Together(a, b) : GroupWish.Apart(a, b));
        }
        return new()
        {
            Pupils = pupils, Sizes = GroupSize.Even(30, groups), Wishes = [.. all, .. Enumerable.Range(0, groups).Select(GroupWish.SupporterIn)],
            Locks = [new(0, 0), new(1, groups - 1)], Goal = goal, Seed = (ulong)seed,
        };
    }
}
