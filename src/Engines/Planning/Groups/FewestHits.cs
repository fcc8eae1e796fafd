namespace Slantwise.Engines.Planning.Groups;

/// <summary>The fewest numbers that hold, of every conflict, one way out of it.</summary>
internal static class FewestHits
{
    /// <summary>Finds them by allowing one more at a time.</summary>
    /// <param name="conflicts">For each one its ways out; none without a way, and none of them empty.</param>
    /// <returns>Of several such the first that is met, going through the conflicts in order and the ways of each from its end.</returns>
    public static List<int> Of(IReadOnlyList<IReadOnlyList<int[]>> conflicts)
    {
        for (var most = 0; ; most++)
            if (Within(conflicts, [], most) is { } found) return found;
    }

    private static List<int>? Within(IReadOnlyList<IReadOnlyList<int[]>> conflicts, List<int> chosen, int most)
    {
        if (chosen.Count > most) return null;
        var open = conflicts.Where(c => !c.Any(way => way.All(chosen.Contains))).ToList();
        if (open.Count == 0) return chosen;
        // Conflicts that share nothing each need numbers of their own.
        var (seen, needed) = (new HashSet<int>(), 0);
        foreach (var ways in open.Where(c => !c.Any(way => way.Any(seen.Contains))))
        {
            foreach (var way in ways) seen.UnionWith(way);
            needed += ways.Min(way => way.Count(n => !chosen.Contains(n)));
        }
        if (chosen.Count + needed > most) return null;
        foreach (var way in open[0].Reverse())
            if (Within(conflicts, [.. chosen, .. way.Except(chosen)], most) is { } found) return found;
        return null;
    }
}
