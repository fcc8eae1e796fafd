namespace Slantwise.Engines.Planning.Space;

/// <summary>One way of laying out mats: the step of the grid, rows or columns first, and which way mats are turned.</summary>
/// <param name="StepM">The step of the grid.</param>
/// <param name="IsByColumns">Whether it goes from front to back first.</param>
/// <param name="IsTurnedFirst">Whether a mat is tried turned before it is tried unturned.</param>
/// <param name="IsEitherWay">Whether the other way is tried as well.</param>
internal sealed record LayoutStart(double StepM, bool IsByColumns, bool IsTurnedFirst, bool IsEitherWay)
{
    /// <summary>All ways, in the order in which they are tried.</summary>
    public static IReadOnlyList<LayoutStart> All { get; } =
    [
        .. from stepM in new[] { 0.25, 0.4 }
           from isByColumns in new[] { false, true }
           from isTurned in new[] { false, true }
           from isEither in new[] { false, true }
           select new LayoutStart(stepM, isByColumns, isTurned, isEither),
    ];

    /// <summary>Lays out mats with these falling circles, in this order, as many as get in before the first that does not.</summary>
    public List<PlacedMat> Lay(Hall hall, MatNeed need, IReadOnlyList<double> fallsM)
    {
        var laid = new List<PlacedMat>();
        var (across, along) = IsByColumns ? (hall.WidthXM, hall.DepthYM) : (hall.DepthYM, hall.WidthXM);
        for (var a = 0; a * StepM <= across && laid.Count < fallsM.Count; a++)
        {
            var at = 0.0;
            while (at <= along && laid.Count < fallsM.Count)
            {
                var isLaid = false;
                foreach (var isTurned in IsEitherWay ? new[] { IsTurnedFirst, !IsTurnedFirst } : [IsTurnedFirst])
                {
                    var mat = At(need, isTurned, fallsM[laid.Count], a * StepM, at);
                    if (!LayoutClashes.IsFree(hall, need, mat, laid)) continue;
                    laid.Add(mat);
                    isLaid = true;
                    // Straight to the next place that can be free: no grid's rounding is lost within a row.
                    at += Extent(need, isTurned) + Math.Max(need.ClearM, 0);
                    break;
                }
                if (!isLaid) at += StepM;
            }
        }
        return laid;
    }

    private double Extent(MatNeed need, bool isTurned) => isTurned == IsByColumns ? need.LengthM : need.WidthM;

    // The grid's first place is the nearest to the corner that walls allow a mat that lies this way.
    private PlacedMat At(MatNeed need, bool isTurned, double fallM, double across, double along)
    {
        var (x, y) = IsByColumns ? (across, along) : (along, across);
        var (width, depth) = isTurned ? (need.WidthM, need.LengthM) : (need.LengthM, need.WidthM);
        return new(new(x + Math.Max(need.WallClearM + width / 2, fallM), y + Math.Max(need.WallClearM + depth / 2, fallM)), isTurned, fallM);
    }
}
