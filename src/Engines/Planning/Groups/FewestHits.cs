namespace Slantwise.Engines.Planning.Groups;

/// <summary>The fewest numbers of which every set has one.</summary>
internal static class FewestHits
{
    /// <summary>Finds them by allowing one more at a time.</summary>
    /// <param name="sets">None empty.</param>
    /// <returns>Of several such the first that is met, going through the sets in order and each set from its end.</returns>
    public static List<int> Of(IReadOnlyList<IReadOnlyList<int>> sets)
    {
        for (var most = 0; ; most++)
            if (Within(sets, [], most) is { } found) return found;
    }

    private static List<int>? Within(IReadOnlyList<IReadOnlyList<int>> sets, List<int> chosen, int most)
    {
        if (sets.FirstOrDefault(s => !s.Any(chosen.Contains)) is not { } open) return chosen;
        if (chosen.Count == most) return null;
        // Sets that share nothing each need one of their own.
        var apart = new HashSet<int>();
        var needed = 0;
        foreach (var set in sets.Where(s => !s.Any(chosen.Contains)))
        {
            if (set.Any(apart.Contains)) continue;
            apart.UnionWith(set);
            needed++;
        }
        if (chosen.Count + needed > most) return null;
        foreach (var number in open.Reverse())
            if (Within(sets, [.. chosen, number], most) is { } found) return found;
        return null;
    }
}
