namespace Slantwise.Engines.Marks;

/// <summary>A few linear equations, by elimination with the largest pivot of a column.</summary>
internal static class LinearEquations
{
    private const double Nothing = 1e-12;

    /// <summary>Solves them.</summary>
    /// <param name="rows">Row by row, n numbers and the right sides; used up.</param>
    /// <param name="n">How many.</param>
    /// <param name="solutions">One after the other, as many as there are right sides; filled where they can be solved.</param>
    /// <returns>Whether they can.</returns>
    public static bool Solve(Span<double> rows, int n, Span<double> solutions)
    {
        var width = n + solutions.Length / n;
        for (var column = 0; column < n; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < n; row++)
                if (Math.Abs(rows[row * width + column]) > Math.Abs(rows[pivot * width + column])) pivot = row;
            if (!(Math.Abs(rows[pivot * width + column]) > Nothing)) return false;
            if (pivot != column)
                for (var j = column; j < width; j++)
                    (rows[pivot * width + j], rows[column * width + j]) = (rows[column * width + j], rows[pivot * width + j]);
            for (var row = column + 1; row < n; row++)
            {
                var factor = rows[row * width + column] / rows[column * width + column];
                if (factor == 0) continue;
                var from = rows.Slice(column * width + column, width - column);
                var to = rows.Slice(row * width + column, width - column);
                for (var j = 0; j < to.Length; j++) to[j] -= factor * from[j];
            }
        }
        for (var side = 0; side < width - n; side++)
        {
            var solution = solutions.Slice(side * n, n);
            for (var row = n - 1; row >= 0; row--)
            {
                var sum = rows[row * width + n + side];
                for (var j = row + 1; j < n; j++) sum -= rows[row * width + j] * solution[j];
                solution[row] = sum / rows[row * width + row];
            }
        }
        return true;
    }
}
