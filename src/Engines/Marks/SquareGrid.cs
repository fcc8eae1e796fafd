namespace Slantwise.Engines.Marks;

/// <summary>Dark squares sorted into cells, to ask quickly for the nearest.</summary>
internal sealed class SquareGrid
{
    private readonly Dictionary<(int, int), List<DarkSquare>> _cells = [];
    private readonly double _cellPx;

    public SquareGrid(IEnumerable<DarkSquare> squares, double cellPx)
    {
        _cellPx = cellPx;
        foreach (var square in squares)
        {
            var cell = Cell(square.XPx, square.YPx);
            if (!_cells.TryGetValue(cell, out var list)) _cells[cell] = list = [];
            list.Add(square);
        }
    }

    /// <summary>The nearest that could be an anchor of so many pixels a side, no farther than a cell.</summary>
    /// <param name="at">Where it should be.</param>
    /// <param name="sidePx">How large it should look.</param>
    /// <param name="isHollow">Whether it should have a hole.</param>
    /// <param name="radiusPx">At most a cell.</param>
    public (DarkSquare Square, double OffPx)? Nearest(PixelPoint at, double sidePx, bool isHollow, double radiusPx)
    {
        (DarkSquare Square, double OffPx)? best = null;
        if (!(Math.Abs(at.XPx) < 1e6 && Math.Abs(at.YPx) < 1e6)) return null;
        var (column, row) = Cell(at.XPx, at.YPx);
        for (var j = row - 1; j <= row + 1; j++)
        {
            for (var i = column - 1; i <= column + 1; i++)
            {
                if (!_cells.TryGetValue((i, j), out var list)) continue;
                foreach (var square in list)
                {
                    var off = double.Hypot(square.XPx - at.XPx, square.YPx - at.YPx);
                    if (off > radiusPx || off >= (best?.OffPx ?? double.MaxValue) || !Fits(square, sidePx, isHollow)) continue;
                    best = (square, off);
                }
            }
        }
        return best;
    }

    public static bool Fits(DarkSquare square, double sidePx, bool isHollow) =>
        square.IsHollow == isHollow && square.SidePx > .66 * sidePx && square.SidePx < 1.5 * sidePx;

    private (int, int) Cell(double xPx, double yPx) => ((int)Math.Floor(xPx / _cellPx), (int)Math.Floor(yPx / _cellPx));
}
