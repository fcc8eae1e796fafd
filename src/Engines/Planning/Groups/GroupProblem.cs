namespace Slantwise.Engines.Planning.Groups;

/// <summary>A request with some of its wishes, ready to be searched: pupils who stay together are one block.</summary>
internal sealed class GroupProblem
{
    private GroupProblem(GroupRequest request, GroupBlock[] blocks, bool[] needsSupporter)
    {
        (Request, Blocks, NeedsSupporter) = (request, blocks, needsSupporter);
        Twin = new int[request.Sizes.Count];
        var isFixed = new bool[request.Sizes.Count];
        foreach (var block in blocks)
            if (block.Fixed is { } g) isFixed[g] = true;
        for (var g = 0; g < Twin.Length; g++)
        {
            Twin[g] = g;
            for (var h = 0; h < g && !isFixed[g]; h++)
            {
                if (isFixed[h] || request.Sizes[h] != request.Sizes[g] || needsSupporter[h] != needsSupporter[g]) continue;
                Twin[g] = h;
                break;
            }
        }
    }

    public GroupRequest Request { get; }

    public GroupBlock[] Blocks { get; }

    public bool[] NeedsSupporter { get; }

    /// <summary>For each group the first one that differs from it in nothing but its number: of such only one empty one is worth a try.</summary>
    public int[] Twin { get; }

    /// <summary>None where wishes contradict each other at once: together and apart, or together in two fixed places.</summary>
    public static GroupProblem? Of(GroupRequest request, IEnumerable<GroupWish> wishes)
    {
        var count = request.Pupils.Count;
        var first = Enumerable.Range(0, count).ToArray();
        int Root(int p)
        {
            while (first[p] != p) p = first[p] = first[first[p]];
            return p;
        }

        var needs = new bool[request.Sizes.Count];
        var kept = wishes.ToList();
        foreach (var wish in kept)
        {
            if (wish.Kind == GroupWishKind.SupporterIn) needs[wish.First] = true;
            if (wish.Kind != GroupWishKind.Together) continue;
            var (a, b) = (Root(wish.First), Root(wish.Second));
            first[Math.Max(a, b)] = Math.Min(a, b);
        }

        var members = Enumerable.Range(0, count).GroupBy(Root).Select(g => g.ToArray()).ToArray();
        var blockOf = new int[count];
        for (var b = 0; b < members.Length; b++)
            foreach (var p in members[b]) blockOf[p] = b;

        var apart = members.Select(_ => new SortedSet<int>()).ToArray();
        foreach (var wish in kept.Where(w => w.Kind == GroupWishKind.Apart))
        {
            var (a, b) = (blockOf[wish.First], blockOf[wish.Second]);
            if (a == b) return null;
            apart[a].Add(b);
            apart[b].Add(a);
        }
        var places = new int?[members.Length];
        foreach (var (pupil, group) in request.Locks.Select(l => (l.Pupil, l.Group)))
        {
            var b = blockOf[pupil];
            if (places[b] is { } other && other != group) return null;
            places[b] = group;
        }
        var blocks = members.Select((m, b) => new GroupBlock(m, m.Count(p => request.Pupils[p].MaySupport), places[b], [.. apart[b]])).ToArray();
        return new(request, blocks, needs);
    }
}
