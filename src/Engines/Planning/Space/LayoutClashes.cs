namespace Slantwise.Engines.Planning.Space;

/// <summary>Finds what comes too near to what.</summary>
public static class LayoutClashes
{
    // Sums of metres that meet exactly must not clash by a rounding: a thousandth of a millimetre.
    private const double NearM = 1e-6;

    /// <summary>All clashes of a layout, also of mats moved by hand.</summary>
    /// <param name="hall">Within the ranges of its properties.</param>
    /// <param name="need">Within the ranges of its properties.</param>
    /// <param name="mats">Any number, also outside of the hall.</param>
    /// <returns>By mat, then by kind, then by the other; a pair of mats once, a falling circle once for each way. Empty where nothing clashes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hall or the mat's need outside its range; a mat whose middle is not finite or whose circle is not of 0 to 10 m.</exception>
    public static IReadOnlyList<LayoutClash> Of(Hall hall, MatNeed need, IReadOnlyList<PlacedMat> mats)
    {
        hall.Check();
        need.Check();
        foreach (var mat in mats)
            if (!double.IsFinite(mat.Centre.XM + mat.Centre.YM) || !(mat.FallM is >= 0 and <= 10))
                throw new ArgumentOutOfRangeException(nameof(mats), mat, "A mat has a place, and a falling circle of 0 to 10 metres.");

        var clashes = new List<LayoutClash>();
        for (var m = 0; m < mats.Count; m++)
        {
            Alone(hall, need, mats[m], m, clashes);
            for (var o = 0; o < mats.Count; o++)
                if (o != m) Pair(need, mats[m], m, mats[o], o, clashes);
        }
        return [.. clashes.OrderBy(c => c.Mat).ThenBy(c => c.Kind).ThenBy(c => c.Other)];
    }

    /// <summary>Whether a mat can lie there beside walls, obstacles and other mats, for whoever has checked the rest.</summary>
    internal static bool IsFree(Hall hall, MatNeed need, PlacedMat mat, IReadOnlyList<PlacedMat> others)
    {
        var clashes = new List<LayoutClash>();
        foreach (var other in others)
        {
            Pair(need, mat, 0, other, 1, clashes);
            Pair(need, other, 1, mat, 0, clashes);
            if (clashes.Count > 0) return false;
        }
        Alone(hall, need, mat, 0, clashes);
        return clashes.Count == 0;
    }

    private static void Alone(Hall hall, MatNeed need, PlacedMat mat, int m, List<LayoutClash> clashes)
    {
        var covers = mat.Covers(need);
        var toWalls = (covers.LeftXM, hall.WidthXM - covers.RightXM, covers.FrontYM, hall.DepthYM - covers.BackYM);
        var fromMiddle = (mat.Centre.XM, hall.WidthXM - mat.Centre.XM, mat.Centre.YM, hall.DepthYM - mat.Centre.YM);
        for (var wall = 0; wall < 4; wall++)
        {
            Add(clashes, ClashKind.MatAndWall, m, wall, need.WallClearM - Nth(toWalls, wall));
            if (mat.FallM > 0) Add(clashes, ClashKind.FallAndWall, m, wall, mat.FallM - Nth(fromMiddle, wall));
        }
        for (var o = 0; o < hall.Obstacles.Count; o++)
        {
            var place = hall.Obstacles[o].Place;
            Add(clashes, ClashKind.MatAndObstacle, m, o, need.WallClearM - covers.GapM(place));
            if (mat.FallM > 0) Add(clashes, ClashKind.FallAndObstacle, m, o, mat.FallM - place.GapM(mat.Centre));
        }
    }

    private static void Pair(MatNeed need, PlacedMat mat, int m, PlacedMat other, int o, List<LayoutClash> clashes)
    {
        var covers = other.Covers(need);
        if (m < o) Add(clashes, ClashKind.MatAndMat, m, o, need.ClearM - mat.Covers(need).GapM(covers));
        if (mat.FallM > 0) Add(clashes, ClashKind.FallAndMat, m, o, mat.FallM - covers.GapM(mat.Centre));
        if (!need.AreCirclesApart || m > o || mat.FallM == 0 || other.FallM == 0) return;
        var (x, y) = (mat.Centre.XM - other.Centre.XM, mat.Centre.YM - other.Centre.YM);
        Add(clashes, ClashKind.FallAndFall, m, o, mat.FallM + other.FallM - Math.Sqrt(x * x + y * y));
    }

    private static void Add(List<LayoutClash> clashes, ClashKind kind, int mat, int other, double missingM)
    {
        if (missingM > NearM) clashes.Add(new(kind, mat, other, missingM));
    }

    private static double Nth((double, double, double, double) four, int n) => n switch { 0 => four.Item1, 1 => four.Item2, 2 => four.Item3, _ => four.Item4 };
}
