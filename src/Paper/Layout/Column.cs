namespace Slantwise.Paper.Layout;

/// <summary>Puts blocks onto pages and shares out the room that is left.</summary>
internal static class Column
{
    // White space may grow to this many times itself on a page with room to spare, and no further: it still groups.
    private const double AiryFraction = 2.2;

    private const double StepMm = 4;

    /// <summary>The pages, each with its blocks in order and their places; as few as can be, filled from the first on.</summary>
    /// <param name="blocks">At least one.</param>
    /// <param name="later">What stands first on every page but the first.</param>
    /// <param name="topMm">Where the first block of a page begins.</param>
    /// <param name="bottomMm">Where the room ends.</param>
    /// <param name="footMm">How much of the room at the bottom only a foot may use.</param>
    public static IReadOnlyList<IReadOnlyList<Placed>> Pages(IReadOnlyList<Block> blocks, Block later, double topMm, double bottomMm, double footMm = 0) =>
        Broken(blocks, later, topMm, bottomMm - topMm, bottomMm, footMm);

    /// <summary>The pages as <see cref="Pages"/> gives them, but each about as full as the others.</summary>
    public static IReadOnlyList<IReadOnlyList<Placed>> EvenPages(IReadOnlyList<Block> blocks, Block later, double topMm, double bottomMm, double footMm)
    {
        var pages = Broken(blocks, later, topMm, bottomMm - topMm, bottomMm, footMm);
        // The least room a page that needs no page more.
        for (var room = bottomMm - topMm - StepMm; pages.Count > 1 && room > 0; room -= StepMm)
        {
            var evener = Broken(blocks, later, topMm, room, bottomMm, footMm);
            if (evener.Count > pages.Count) break;
            // Not where it would part what belongs together.
            if (evener.SkipLast(1).All(page => !page[^1].Block.StaysWithNext)) pages = evener;
        }
        return pages;
    }

    private static List<IReadOnlyList<Placed>> Broken(
        IReadOnlyList<Block> blocks, Block later, double topMm, double roomMm, double bottomMm, double footMm)
    {
        var pages = new List<IReadOnlyList<Placed>>();
        for (var next = 0; next < blocks.Count;)
        {
            Block[] first = pages.Count == 0 ? [] : [later];
            var count = CountThatFits(first, blocks, next, roomMm, footMm);
            var page = blocks.Skip(next).Take(count).ToList();
            pages.Add(Place([.. first, .. WithHeads(page)], topMm, page[^1].IsFoot ? bottomMm : bottomMm - footMm));
            next += count;
        }
        return pages;
    }

    private static int CountThatFits(Block[] above, IReadOnlyList<Block> blocks, int first, double roomMm, double footMm)
    {
        var count = 0;
        while (first + count < blocks.Count
            && Least([.. above, .. WithHeads(blocks.Skip(first).Take(count + 1))]) <= roomMm - (blocks[first + count].IsFoot ? 0 : footMm)) count++;
        if (first + count == blocks.Count) return count;
        // Go back to where the page may end; where it may end nowhere, take what fits, and one block at least.
        var end = count;
        while (end > 0 && blocks[first + end - 1].StaysWithNext) end--;
        return Math.Max(1, end > 0 ? end : count);
    }

    private static List<Block> WithHeads(IEnumerable<Block> blocks)
    {
        var all = new List<Block>();
        Block? head = null;
        foreach (var block in blocks)
        {
            if (block.Head is { } own && !ReferenceEquals(own, head)) all.Add(own);
            head = block.Head;
            all.Add(block);
        }
        return all;
    }

    private static double Least(List<Block> blocks) => blocks.Sum(b => b.LeastMm) + blocks.Skip(1).Sum(b => b.GapMm);

    private static List<Placed> Place(List<Block> blocks, double topMm, double bottomMm)
    {
        var room = Math.Max(0, bottomMm - topMm - Least(blocks));
        var gaps = blocks.Skip(1).Sum(b => b.GapMm) * (AiryFraction - 1);
        var stretch = blocks.Sum(b => b.StretchMm);
        var share = gaps + stretch > 0 ? Math.Min(1, room / (gaps + stretch)) : 0;
        var placed = new List<Placed>();
        var y = topMm;
        for (var i = 0; i < blocks.Count; i++)
        {
            if (i > 0) y += blocks[i].GapMm * (1 + share * (AiryFraction - 1));
            var height = blocks[i].LeastMm + share * blocks[i].StretchMm;
            placed.Add(new Placed(blocks[i], y, height));
            y += height;
        }
        return placed;
    }
}
