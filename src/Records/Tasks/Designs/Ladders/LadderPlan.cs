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

    /// <summary>A plan for a design as it stands: its key factor over its whole range, its first one or two supporting ones over the part its levels use, as many levels as it has, in the way they follow.</summary>
    /// <param name="design">A design with a key factor that has a value.</param>
    /// <returns>None where the grid has no key factor with two values, or no dose.</returns>
    public static LadderPlan? For(TaskDesign design)
    {
        if (design.Factors.FirstOrDefault(f => f.Role == FactorRole.Key && f.Range.Count > 1) is not { } key || design.Factors.All(f => f.Dose is null || f.Range.Count == 0)) return null;
        var kind = LadderOrder.KindOf(design) ?? LadderKind.SemiClassical;
        var helping = design.Factors.Where(f => f.Key != key.Key && f.Range.Count > 1 && !LadderGrid.IsOtherDose(design, f)).Take(SupportingCountMost).Select(f => UsedPart(design, f));
        return new LadderPlan(
            kind, Whole(key), kind == LadderKind.Classical ? [] : [.. helping], Math.Clamp(design.Levels.Count == 0 ? key.Range.Count : design.Levels.Count, LevelCountLeast, LevelCountMost));
    }

    /// <summary>The plan after its grid has changed.</summary>
    /// <param name="before">The design the plan was made for.</param>
    /// <param name="now">The design as it is.</param>
    /// <returns>A span that was a whole range still is; any other keeps its two values where they still are. A new plan where the key factor is gone; none where there can be none.</returns>
    public LadderPlan? Fit(TaskDesign before, TaskDesign now)
    {
        if (now.Factors.All(f => f.Dose is null || f.Range.Count == 0) || Fit(before, now, Key) is not { } key) return For(now);
        return this with
        {
            Key = key,
            Supporting = [.. Supporting.Select(s => Fit(before, now, s)).OfType<LadderSpan>()],
            Stays = Stays.Where(s => now.Factors.Any(f => f.Key == s.Key && s.Value < f.Range.Count)).ToDictionary(),
        };
    }

    private static LadderSpan? Fit(TaskDesign before, TaskDesign now, LadderSpan span)
    {
        var (old, row) = (before.Factors.First(f => f.Key == span.FactorKey), now.Factors.FirstOrDefault(f => f.Key == span.FactorKey));
        if (row is null || row.Range.Count == 0) return null;
        if (span.First == 0 && span.Last == old.Range.Count - 1) return Whole(row);
        var range = row.Range.ToList();
        var (first, last) = (range.IndexOf(old.Range[span.First]), range.IndexOf(old.Range[span.Last]));
        if (first < 0) first = Math.Min(span.First, range.Count - 1);
        if (last < 0) last = Math.Min(span.Last, range.Count - 1);
        return span with { First = Math.Min(first, last), Last = Math.Max(first, last) };
    }

    // Where levels stand says more about what a teacher wants than the whole range does.
    private static LadderSpan UsedPart(TaskDesign design, TaskFactor factor)
    {
        var used = design.Levels.Select(l => LadderOrder.PlaceOf(factor, l)).OfType<int>().ToList();
        return used.Count > 0 && used.Min() < used.Max() ? new LadderSpan(factor.Key, used.Min(), used.Max()) : Whole(factor);
    }

    private static LadderSpan Whole(TaskFactor factor) => new(factor.Key, 0, factor.Range.Count - 1);
}
