namespace Slantwise.Engines.Statistics.Reach;

/// <summary>Levels that would include more pupils if they were added.</summary>
/// <param name="Candidates">Indices of the levels to add, in their order; empty where none would help.</param>
/// <param name="IncludedCount">The expected number of pupils included with them.</param>
/// <param name="IsExact">Whether every choice of so many was looked at: up to 12 candidates, or one level to add; else the best one was added again and again.</param>
public sealed record ReachAddition(IReadOnlyList<int> Candidates, double IncludedCount, bool IsExact)
{
    /// <summary>Up to so many candidates every choice is looked at.</summary>
    public const int ExactCandidateCount = 12;

    // A gain of less than a twentieth of a pupil is not worth a level on a sheet.
    private const double WorthwhileCount = .05;

    /// <summary>The additions that include most pupils.</summary>
    /// <param name="pupils">Each with the sheet's levels first and the candidates after them, the same number for all.</param>
    /// <param name="sheetLevelCount">How many of the levels are on the sheet already, 0 or more.</param>
    /// <param name="addCount">How many may be added, 1 or more; fewer are taken where more do not help.</param>
    /// <param name="band">The chances of success that count as included.</param>
    /// <exception cref="ArgumentException">Pupils with different numbers of levels, or fewer than are on the sheet; values that are not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No level may be added.</exception>
    public static ReachAddition Best(IReadOnlyList<PupilOutlook> pupils, int sheetLevelCount, int addCount, ReachBand band)
    {
        if (addCount < 1) throw new ArgumentOutOfRangeException(nameof(addCount), addCount, "At least one level may be added.");
        var levelCount = pupils.Count == 0 ? sheetLevelCount : pupils[0].Levels.Count;
        if (sheetLevelCount < 0 || sheetLevelCount > levelCount) throw new ArgumentException($"Of {levelCount} levels {sheetLevelCount} cannot be on the sheet.", nameof(sheetLevelCount));
        foreach (var pupil in pupils) OutlookNodes.Check(pupil, levelCount);

        var search = new ReachSearch(pupils, sheetLevelCount, band);
        var candidateCount = levelCount - sheetLevelCount;
        var isExact = candidateCount <= ExactCandidateCount || addCount == 1;
        var best = new ReachAddition([], search.Included([]), isExact);
        for (var size = 1; size <= Math.Min(addCount, candidateCount); size++)
        {
            var (chosen, includedCount) = candidateCount <= ExactCandidateCount ? search.BestOf(candidateCount, size) : search.BestWith(best.Candidates, candidateCount);
            if (includedCount < best.IncludedCount + WorthwhileCount) break;
            best = new ReachAddition(chosen, includedCount, isExact);
        }
        return best;
    }
}
