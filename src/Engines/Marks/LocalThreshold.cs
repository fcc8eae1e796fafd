namespace Slantwise.Engines.Marks;

/// <summary>What is darker than its surroundings: a pixel against the mean of a square around it.</summary>
/// <remarks>
/// Source: [BradleyRoth2007] the comparison with a share of the local mean. The mean slides: a column's sum is kept from row to row, so that the
/// size of the square costs nothing.
/// </remarks>
internal static class LocalThreshold
{
    private const int DarkerByAtLeast = 14;

    /// <summary>1 where a pixel has at most this share of the mean around it, else 0.</summary>
    /// <param name="image">The picture.</param>
    /// <param name="reachPx">How far the square reaches to each side.</param>
    /// <param name="shareFraction">The share.</param>
    public static byte[] Of(GreyImage image, int reachPx, double shareFraction)
    {
        var (width, height) = (image.WidthPx, image.HeightPx);
        var mask = new byte[width * height];
        var columns = new int[width];
        for (var y = 0; y < Math.Min(reachPx, height); y++) Add(image, y, columns, 1);
        var share = (float)shareFraction;
        for (var y = 0; y < height; y++)
        {
            if (y + reachPx < height) Add(image, y + reachPx, columns, 1);
            if (y - reachPx - 1 >= 0) Add(image, y - reachPx - 1, columns, -1);
            var rows = Math.Min(y + reachPx, height - 1) - Math.Max(y - reachPx, 0) + 1;
            Compare(image.Values.AsSpan(y * width, width), columns, rows, reachPx, share, mask.AsSpan(y * width, width));
        }
        return mask;
    }

    private static void Add(GreyImage image, int y, int[] columns, int sign)
    {
        var row = image.Values.AsSpan(y * image.WidthPx, image.WidthPx);
        var sums = columns.AsSpan(0, row.Length);
        if (sign > 0)
        {
            for (var x = 0; x < row.Length; x++) sums[x] += row[x];
        }
        else
        {
            for (var x = 0; x < row.Length; x++) sums[x] -= row[x];
        }
    }

    private static void Compare(ReadOnlySpan<byte> row, int[] columns, int rows, int reach, float share, Span<byte> mask)
    {
        var sum = 0;
        for (var x = 0; x < Math.Min(reach, row.Length); x++) sum += columns[x];
        for (var x = 0; x < row.Length; x++)
        {
            if (x + reach < row.Length) sum += columns[x + reach];
            if (x - reach - 1 >= 0) sum -= columns[x - reach - 1];
            var count = (Math.Min(x + reach, row.Length - 1) - Math.Max(x - reach, 0) + 1) * rows;
            var grey = row[x] * count;
            if (grey < share * sum && sum - grey > DarkerByAtLeast * count) mask[x] = 1;
        }
    }
}
