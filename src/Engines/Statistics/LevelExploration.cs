namespace Slantwise.Engines.Statistics;

/// <summary>How many of the levels open to a pupil were tried. Trying few is no fault: one that fits may be enough.</summary>
/// <param name="TriedCount">Different levels tried, of those that were open.</param>
/// <param name="OpenCount">Different levels open after policy and restrictions.</param>
public readonly record struct LevelExploration(int TriedCount, int OpenCount)
{
    /// <summary>The share tried, 0 to 1; none where none was open.</summary>
    public double? TriedFraction => OpenCount == 0 ? null : (double)TriedCount / OpenCount;

    /// <summary>The exploration of some levels.</summary>
    /// <param name="tried">Levels of the sets done, any number, repeats count once; one that is not open any more is left out.</param>
    /// <param name="open">Levels open to the pupil, repeats count once.</param>
    public static LevelExploration Of(IEnumerable<int> tried, IEnumerable<int> open)
    {
        var levels = open.ToHashSet();
        return new(tried.Where(levels.Contains).Distinct().Count(), levels.Count);
    }
}
