using Slantwise.Records.Checks;

namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>What a teacher asks for: how the levels should follow from the grid, over which part of which factors, and how many.</summary>
/// <param name="Kind">The design.</param>
/// <param name="Key">The key factor and the part of its range.</param>
/// <param name="Supporting">One or two more that may move, in the order to use them; none for a classical design. Others stay.</param>
/// <param name="LevelCount">How many levels, 2 to 6.</param>
public sealed record LadderPlan(LadderKind Kind, LadderSpan Key, IReadOnlyList<LadderSpan> Supporting, int LevelCount)
{
    /// <summary>Levels, at least.</summary>
    public const int LevelCountLeast = 2;

    /// <summary>Levels, at most: as many as a sheet takes.</summary>
    public const int LevelCountMost = Limits.SheetLevelCount;

    /// <summary>Supporting factors, at most.</summary>
    public const int SupportingCountMost = 2;

    /// <summary>Where a factor that is not moved stays, by its key; the place in its range, from 0. The usual place of the levels there are, where it is not named.</summary>
    public IReadOnlyDictionary<string, int> Stays { get; init; } = new Dictionary<string, int>();

    /// <summary>A plan for a design as it stands: its key factor over its whole range, its first one or two supporting ones, as many levels as it has, in the way they follow.</summary>
    /// <param name="design">A design with a key factor that has a value.</param>
    /// <returns>None where the grid has no key factor with two values, or no dose.</returns>
    public static LadderPlan? For(TaskDesign design)
    {
        if (design.Factors.FirstOrDefault(f => f.Role == FactorRole.Key && f.Range.Count > 1) is not { } key || design.Factors.All(f => f.Dose is null || f.Range.Count == 0)) return null;
        var kind = LadderOrder.KindOf(design) ?? LadderKind.SemiClassical;
        var helping = design.Factors.Where(f => f.Key != key.Key && f.Range.Count > 1 && !LadderGrid.IsOtherDose(design, f)).Take(SupportingCountMost).Select(Whole);
        return new LadderPlan(
            kind, Whole(key), kind == LadderKind.Classical ? [] : [.. helping], Math.Clamp(design.Levels.Count == 0 ? key.Range.Count : design.Levels.Count, LevelCountLeast, LevelCountMost));
    }

    private static LadderSpan Whole(TaskFactor factor) => new(factor.Key, 0, factor.Range.Count - 1);
}
