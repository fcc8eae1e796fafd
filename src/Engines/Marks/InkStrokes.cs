namespace Slantwise.Engines.Marks;

/// <summary>The ink inside a field: how much, how long its longest piece is and how far it is spread.</summary>
internal readonly record struct InkStrokes(int Count, double LongestMm, double SpreadMm)
{
    /// <summary>Those of one field.</summary>
    /// <param name="patch">Darkness.</param>
    /// <param name="zones">What is inside.</param>
    /// <param name="darkerThan">What counts as ink.</param>
    public static InkStrokes Of(FieldPatch patch, FieldZones zones, float darkerThan)
    {
        var ink = new bool[patch.Values.Length];
        var count = 0;
        double x = 0, y = 0, squares = 0;
        foreach (var pixel in zones.Inside)
        {
            if (patch.Values[pixel] <= darkerThan) continue;
            ink[pixel] = true;
            var (column, row) = (pixel % patch.Width, pixel / patch.Width);
            (count, x, y, squares) = (count + 1, x + column, y + row, squares + (double)column * column + (double)row * row);
        }
        if (count == 0) return default;
        var spread = Math.Sqrt(Math.Max(0, squares / count - (x * x + y * y) / count / count)) / FieldPatch.PxPerMm;
        return new(count, Longest(patch, zones, ink, count) / FieldPatch.PxPerMm, spread);
    }

    // Ink that touches, corners included, is one piece; its length is the diagonal of what holds it.
    private static double Longest(FieldPatch patch, FieldZones zones, bool[] ink, int count)
    {
        var (longest, stack, width) = (0.0, new int[count], patch.Width);
        foreach (var first in zones.Inside)
        {
            if (!ink[first]) continue;
            ink[first] = false;
            var (top, left, right, above, below) = (0, int.MaxValue, 0, int.MaxValue, 0);
            stack[top++] = first;
            while (top > 0)
            {
                var pixel = stack[--top];
                var (x, y) = (pixel % width, pixel / width);
                (left, right, above, below) = (Math.Min(left, x), Math.Max(right, x), Math.Min(above, y), Math.Max(below, y));
                for (var j = -1; j <= 1; j++)
                {
                    for (var i = -1; i <= 1; i++)
                    {
                        var next = pixel + j * width + i;
                        if (!ink[next]) continue;
                        ink[next] = false;
                        stack[top++] = next;
                    }
                }
            }
            longest = Math.Max(longest, double.Hypot(right - left + 1, below - above + 1));
        }
        return longest;
    }
}
