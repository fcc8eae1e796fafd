namespace Slantwise.Engines.Statistics.Reach;

/// <summary>Tries additions to a sheet, with what each pupil gets from the sheet worked out once.</summary>
internal sealed class ReachSearch
{
    private readonly OutlookNodes[] _pupils;
    private readonly double[][] _none;
    private readonly int _sheetLevelCount;

    public ReachSearch(IReadOnlyList<PupilOutlook> pupils, int sheetLevelCount, ReachBand band)
    {
        _sheetLevelCount = sheetLevelCount;
        _pupils = [.. pupils.Select(p => new OutlookNodes(p, band))];
        _none = [.. _pupils.Select(p => p.NoneWithinAt(sheetLevelCount))];
    }

    /// <summary>The expected number of pupils included with some candidates.</summary>
    public double Included(IReadOnlyList<int> candidates)
    {
        var includedCount = 0.0;
        for (var i = 0; i < _pupils.Length; i++)
        {
            var none = (double[])_none[i].Clone();
            foreach (var candidate in candidates)
            {
                var within = _pupils[i].WithinAt(_sheetLevelCount + candidate);
                for (var k = 0; k < none.Length; k++) none[k] *= 1 - within[k];
            }
            includedCount += 1 - none.Average();
        }
        return includedCount;
    }

    /// <summary>The best choice of exactly so many candidates; of equal ones the first.</summary>
    public (IReadOnlyList<int> Chosen, double IncludedCount) BestOf(int candidateCount, int size)
    {
        (IReadOnlyList<int> Chosen, double IncludedCount) best = ([], double.NegativeInfinity);
        for (var set = 0; set < 1 << candidateCount; set++)
        {
            if (int.PopCount(set) != size) continue;
            var chosen = Enumerable.Range(0, candidateCount).Where(c => (set >> c & 1) == 1).ToArray();
            var includedCount = Included(chosen);
            if (includedCount > best.IncludedCount) best = (chosen, includedCount);
        }
        return best;
    }

    /// <summary>The best single addition to those already chosen; of equal ones the first.</summary>
    public (IReadOnlyList<int> Chosen, double IncludedCount) BestWith(IReadOnlyList<int> chosen, int candidateCount)
    {
        (IReadOnlyList<int> Chosen, double IncludedCount) best = (chosen, double.NegativeInfinity);
        for (var candidate = 0; candidate < candidateCount; candidate++)
        {
            if (chosen.Contains(candidate)) continue;
            int[] tried = [.. chosen.Append(candidate).Order()];
            var includedCount = Included(tried);
            if (includedCount > best.IncludedCount) best = (tried, includedCount);
        }
        return best;
    }
}
