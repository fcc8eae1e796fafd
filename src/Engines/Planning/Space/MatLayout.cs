namespace Slantwise.Engines.Planning.Space;

/// <summary>Mats laid out in a hall.</summary>
/// <param name="Mats">Where they lie, from the front left, each with its circle; none of them clashes with anything. Fewer than asked for where no more were placed: then those with the largest circles.</param>
/// <param name="MostLaidOut">How many with the smallest circle this way of laying out gets in at most; others may get in more.</param>
/// <param name="Bound">How many nobody can exceed, by area; see <see cref="MatBound"/>.</param>
/// <param name="SpareClearM">How much more than the clear distance all mats have between them.</param>
/// <param name="Sight">The best place for the teacher on a grid of 1 m; none where there is none.</param>
/// <remarks>
/// A heuristic: mats go one by one to the first free place of a grid that starts at the nearest place the walls allow; grids of several steps, by rows and by columns, unturned, turned
/// and either way are tried, and rows of their own length. Kept is the layout with most mats, then with most room between them, found by halving; of equal ones the first. The largest circles are placed first. What is left
/// along the walls is shared between both sides.
/// </remarks>
public sealed record MatLayout(IReadOnlyList<PlacedMat> Mats, int MostLaidOut, int Bound, double SpareClearM, TeacherSight? Sight)
{
    private const double MostClearM = 10;

    /// <summary>Lays out mats.</summary>
    /// <param name="hall">Within the ranges of its properties.</param>
    /// <param name="need">Within the ranges of its properties.</param>
    /// <param name="fallsM">The radius of each mat's falling circle, 0 to 10, of 0 to 100 mats in any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">The hall or the mat's need outside its range; mats not of 0 to 100; a circle not of 0 to 10 m.</exception>
    public static MatLayout Of(Hall hall, MatNeed need, IReadOnlyList<double> fallsM)
    {
        hall.Check();
        need.Check();
        if (fallsM.Count > 100) throw new ArgumentOutOfRangeException(nameof(fallsM), fallsM.Count, "0 to 100 mats are laid out.");
        foreach (var fallM in fallsM)
            if (!(fallM is >= 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(fallsM), fallM, "A falling circle has a radius of 0 to 10 metres.");

        var leastM = fallsM.Count > 0 ? fallsM.Min() : 0;
        var bound = MatBound.Of(hall, need, leastM);
        var most = LayoutStart.All.Max(s => s.Lay(hall, need, [.. Enumerable.Repeat(leastM, Math.Min(bound, 400))]).Count);
        var largestFirst = fallsM.OrderDescending().ToList();
        List<PlacedMat> best = [];
        foreach (var start in LayoutStart.All)
        {
            var laid = start.Lay(hall, need, largestFirst);
            if (laid.Count > best.Count) best = laid;
        }
        var (wanted, spareM) = (best.Count, 0.0);
        largestFirst.RemoveRange(wanted, largestFirst.Count - wanted);
        foreach (var start in LayoutStart.All)
        {
            // A start is worth halving only if it beats what there is: first one try just above it.
            var (low, high) = (spareM, MostClearM - need.ClearM);
            if (wanted < 2 || low + 0.05 > high || Widened(start, low + 0.05) is null) continue;
            while (high - low > 0.02)
            {
                var middle = (low + high) / 2;
                if (Widened(start, middle) is { } laid) (low, best, spareM) = (middle, laid, middle);
                else high = middle;
            }
        }
        var shared = Shared(hall, need, best);
        return new([.. shared.OrderBy(m => m.Centre.YM).ThenBy(m => m.Centre.XM)], Math.Max(most, wanted), bound, spareM, TeacherSight.Best(hall, need, shared, 1));

        List<PlacedMat>? Widened(LayoutStart start, double spare)
        {
            var laid = start.Lay(hall, need with { ClearM = need.ClearM + spare }, largestFirst);
            return laid.Count >= wanted ? laid : null;
        }
    }

    // Half of what is left to the far walls, a little less until nothing clashes.
    private static List<PlacedMat> Shared(Hall hall, MatNeed need, List<PlacedMat> mats)
    {
        if (mats.Count == 0) return mats;
        var covers = mats.Select(m => m.Covers(need)).ToList();
        var x = (hall.WidthXM - covers.Max(c => c.RightXM) - covers.Min(c => c.LeftXM)) / 2;
        var y = (hall.DepthYM - covers.Max(c => c.BackYM) - covers.Min(c => c.FrontYM)) / 2;
        foreach (var (partX, partY) in new[] { (1, 1), (1, 0.5), (0.5, 1), (0.5, 0.5), (1, 0), (0, 1), (0.5, 0), (0, 0.5) })
        {
            var moved = mats.Select(m => m with { Centre = new(m.Centre.XM + partX * x, m.Centre.YM + partY * y) }).ToList();
            if (moved.TrueForAll(m => LayoutClashes.IsFree(hall, need, m, []))) return moved;
        }
        return mats;
    }
}
