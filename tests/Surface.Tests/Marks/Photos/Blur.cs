namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>What a lens out of focus or a moving hand does to light.</summary>
internal static class Blur
{
    /// <summary>A bell of the given spread, along rows and then along columns.</summary>
    public static void Defocus(float[] light, int width, int height, double sdPx)
    {
        if (sdPx < .2) return;
        var reach = (int)Math.Ceiling(2.5 * sdPx);
        var weights = new float[2 * reach + 1];
        for (var i = -reach; i <= reach; i++) weights[i + reach] = (float)Math.Exp(-i * i / (2 * sdPx * sdPx));
        var total = weights.Sum();
        for (var i = 0; i < weights.Length; i++) weights[i] /= total;
        var other = new float[light.Length];
        for (var y = 0; y < height; y++) Along(light.AsSpan(y * width, width), other.AsSpan(y * width, width), weights);
        // Columns row by row: each row is the weighted sum of its neighbours.
        for (var y = 0; y < height; y++)
        {
            var target = light.AsSpan(y * width, width);
            target.Clear();
            for (var k = -reach; k <= reach; k++)
                Add(target, other.AsSpan(Math.Clamp(y + k, 0, height - 1) * width, width), weights[k + reach]);
        }
    }

    /// <summary>The mean along a line.</summary>
    public static void Motion(float[] light, int width, int height, double lengthPx, double directionRad)
    {
        if (lengthPx < 1) return;
        var count = (int)Math.Ceiling(lengthPx) + 1;
        var (sin, cos) = Math.SinCos(directionRad);
        var from = (float[])light.Clone();
        Array.Clear(light);
        for (var k = 0; k < count; k++)
        {
            var along = (k / (count - 1.0) - .5) * lengthPx;
            var (dx, dy) = ((int)Math.Round(along * cos), (int)Math.Round(along * sin));
            for (var y = 0; y < height; y++)
            {
                var source = from.AsSpan(Math.Clamp(y + dy, 0, height - 1) * width, width);
                var target = light.AsSpan(y * width, width);
                var (first, last) = (Math.Max(0, -dx), Math.Min(width, width - dx));
                Add(target[first..last], source[(first + dx)..(last + dx)], 1f / count);
                for (var x = 0; x < first; x++) target[x] += source[0] / count;
                for (var x = last; x < width; x++) target[x] += source[^1] / count;
            }
        }
    }

    private static void Along(ReadOnlySpan<float> source, Span<float> target, float[] weights)
    {
        var reach = weights.Length / 2;
        target.Clear();
        for (var k = -reach; k <= reach; k++)
        {
            var (first, last) = (Math.Max(0, -k), Math.Min(source.Length, source.Length - k));
            Add(target[first..last], source[(first + k)..(last + k)], weights[k + reach]);
            for (var x = 0; x < first; x++) target[x] += source[0] * weights[k + reach];
            for (var x = last; x < source.Length; x++) target[x] += source[^1] * weights[k + reach];
        }
    }

    private static void Add(Span<float> target, ReadOnlySpan<float> source, float weight)
    {
        var step = System.Numerics.Vector<float>.Count;
        var i = 0;
        for (; i + step <= target.Length; i += step)
            (new System.Numerics.Vector<float>(target[i..]) + new System.Numerics.Vector<float>(source[i..]) * weight).CopyTo(target[i..]);
        for (; i < target.Length; i++) target[i] += source[i] * weight;
    }
}
