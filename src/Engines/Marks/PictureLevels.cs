using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Marks;

/// <summary>A picture and its halves, quarters, eighths, each pixel the mean of four; made when asked for.</summary>
internal sealed class PictureLevels(GreyImage whole)
{
    private const int HalvingsAtMost = 5;
    private const int SideAtLeastPx = 16;
    private readonly List<PictureLevel> _levels = [new(whole, 0)];

    public GreyImage Whole => whole;

    /// <summary>The smallest size that still has so many pixels where the whole picture has <paramref name="wholePx"/>.</summary>
    public PictureLevel With(double wholePx, double leastPx)
    {
        var halvings = 0;
        while (halvings < HalvingsAtMost && wholePx / (2 << halvings) >= leastPx && Math.Min(whole.WidthPx, whole.HeightPx) >> (halvings + 1) >= SideAtLeastPx)
            halvings++;
        while (_levels.Count <= halvings) _levels.Add(new(Half(_levels[^1].Image), _levels.Count));
        return _levels[halvings];
    }

    internal static GreyImage Half(GreyImage image)
    {
        var (width, height) = (image.WidthPx / 2, image.HeightPx / 2);
        var half = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            var upper = image.Values.AsSpan(2 * y * image.WidthPx, 2 * width);
            var lower = image.Values.AsSpan((2 * y + 1) * image.WidthPx, 2 * width);
            HalfRow(upper, lower, half.AsSpan(y * width, width));
        }
        return new GreyImage(width, height, half);
    }

    private static void HalfRow(ReadOnlySpan<byte> upper, ReadOnlySpan<byte> lower, Span<byte> to)
    {
        var x = 0;
        ref var a = ref MemoryMarshal.GetReference(upper);
        ref var b = ref MemoryMarshal.GetReference(lower);
        var even = Vector256.Create((ushort)0xFF);
        for (; x + 32 <= to.Length; x += 32)
        {
            var first = Fours(ref a, ref b, (nuint)(2 * x), even);
            var second = Fours(ref a, ref b, (nuint)(2 * x + 32), even);
            Vector256.Narrow(first, second).CopyTo(to[x..]);
        }
        for (; x < to.Length; x++) to[x] = (byte)((upper[2 * x] + upper[2 * x + 1] + lower[2 * x] + lower[2 * x + 1] + 2) >> 2);
    }

    // Two neighbours of each row, added and divided by four: a pair of bytes is one number of sixteen bits.
    private static Vector256<ushort> Fours(ref byte a, ref byte b, nuint at, Vector256<ushort> even)
    {
        var upper = Unsafe.ReadUnaligned<Vector256<ushort>>(ref Unsafe.Add(ref a, at));
        var lower = Unsafe.ReadUnaligned<Vector256<ushort>>(ref Unsafe.Add(ref b, at));
        var sum = (upper & even) + (upper >>> 8) + (lower & even) + (lower >>> 8);
        return (sum + Vector256.Create((ushort)2)) >>> 2;
    }
}
