using System.Numerics;

namespace Slantwise.Engines.Marks;

/// <summary>The lightest and the darkest grey within reach of each pixel, in a square.</summary>
/// <remarks>
/// Source: [Serra1982] dilation and erosion by a flat square, one direction after the other. A window of any length is two overlapping windows of a
/// length that doubles each time.
/// </remarks>
internal static class SlidingGreys
{
    public static byte[] Lightest(byte[] values, int width, int height, int reach) => Both(values, width, height, reach, isLightest: true);

    public static byte[] Darkest(byte[] values, int width, int height, int reach) => Both(values, width, height, reach, isLightest: false);

    private static byte[] Both(byte[] values, int width, int height, int reach, bool isLightest)
    {
        var across = new byte[width * height];
        var (row, buffer) = (new byte[width + 2 * reach], new byte[width + 2 * reach]);
        for (var y = 0; y < height; y++)
        {
            var from = values.AsSpan(y * width, width);
            row.AsSpan(0, reach).Fill(from[0]);
            from.CopyTo(row.AsSpan(reach));
            row.AsSpan(reach + width).Fill(from[^1]);
            Slide(ref row, ref buffer, 1, 2 * reach + 1, isLightest);
            row.AsSpan(0, width).CopyTo(across.AsSpan(y * width));
        }
        var (down, spare) = (new byte[width * (height + 2 * reach)], new byte[width * (height + 2 * reach)]);
        for (var y = 0; y < height + 2 * reach; y++) across.AsSpan(Math.Clamp(y - reach, 0, height - 1) * width, width).CopyTo(down.AsSpan(y * width));
        Slide(ref down, ref spare, width, 2 * reach + 1, isLightest);
        return down.AsSpan(0, width * height).ToArray();
    }

    // Each value becomes the extreme of itself and those after it, "window" of them a "stride" apart.
    private static void Slide(ref byte[] values, ref byte[] spare, int stride, int window, bool isLightest)
    {
        var length = 1;
        while (length < window)
        {
            var step = Math.Min(length, window - length) * stride;
            Extreme(values.AsSpan(0, values.Length - step), values.AsSpan(step), spare.AsSpan(0, values.Length - step), isLightest);
            values.AsSpan(values.Length - step).CopyTo(spare.AsSpan(values.Length - step));
            (values, spare) = (spare, values);
            length += step / stride;
        }
    }

    private static void Extreme(ReadOnlySpan<byte> a, ReadOnlySpan<byte> b, Span<byte> to, bool isLightest)
    {
        var i = 0;
        for (; i + Vector<byte>.Count <= to.Length; i += Vector<byte>.Count)
        {
            var (first, second) = (new Vector<byte>(a[i..]), new Vector<byte>(b[i..]));
            (isLightest ? Vector.Max(first, second) : Vector.Min(first, second)).CopyTo(to[i..]);
        }
        for (; i < to.Length; i++) to[i] = isLightest ? Math.Max(a[i], b[i]) : Math.Min(a[i], b[i]);
    }
}
