namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>How the levels of a task follow each other on its grid, read off the grid alone.</summary>
public static class LadderOrder
{
    /// <summary>The design that the levels of a task have.</summary>
    /// <param name="design">The task.</param>
    /// <returns>
    /// Classical where one and the same factor gets harder with every step, cumulative where nothing ever eases, semi-classical otherwise. None with fewer than
    /// two levels or with one that is not on the grid.
    /// </returns>
    public static LadderKind? KindOf(TaskDesign design)
    {
        if (design.Levels.Count < 2 || !design.Levels.All(design.IsOnGrid)) return null;
        var steps = design.Levels.Zip(design.Levels.Skip(1)).Select(pair => StepsOf(design, pair.First, pair.Second)).ToList();
        if (steps.Any(moves => moves.Count == 0 || moves.Any(m => m.By < 0))) return LadderKind.SemiClassical;
        return steps.All(moves => moves.Count == 1 && moves[0].FactorKey == steps[0][0].FactorKey) ? LadderKind.Classical : LadderKind.Cumulative;
    }

    /// <summary>What moves from a level to another, in places of each factor's range: more than 0 towards the hard end.</summary>
    /// <param name="design">The task.</param>
    /// <param name="from">A level on the grid.</param>
    /// <param name="to">Another.</param>
    /// <returns>The factors that move, in the grid's order. A factor on which one of the two does not stand is passed over.</returns>
    public static IReadOnlyList<LadderMove> StepsOf(TaskDesign design, DesignedLevel from, DesignedLevel to) =>
        [.. design.Factors.Select(f => new LadderMove(f.Key, PlaceOf(f, to) - PlaceOf(f, from) ?? 0)).Where(m => m.By != 0)];

    internal static int? PlaceOf(TaskFactor factor, DesignedLevel level)
    {
        if (level.ValueOf(factor) is not { } at) return null;
        for (var i = 0; i < factor.Range.Count; i++)
        {
            if (factor.Range[i] == at) return i;
        }
        return null;
    }
}
