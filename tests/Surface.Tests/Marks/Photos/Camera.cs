using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;
using SkiaSharp;

namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>Takes the picture: light through the view, then lens, sensor and file.</summary>
internal static class Camera
{
    // Place and light are computed at corners of squares and drawn out between them.
    private const int GridPx = 8;

    public static GreyImage Take(Leaf leaf, View view, Shot shot, Luck luck)
    {
        var light = Light(leaf, view, shot, luck);
        Blur.Defocus(light, view.WidthPx, view.HeightPx, shot.DefocusMm * view.PxPerMm);
        Blur.Motion(light, view.WidthPx, view.HeightPx, shot.MotionMm * view.PxPerMm, shot.MotionRad);
        var values = Sensor(light, shot, luck);
        return shot.JpegQuality > 0 ? Jpeg(values, view.WidthPx, view.HeightPx, shot.JpegQuality) : new(view.WidthPx, view.HeightPx, values);
    }

    private static float[] Light(Leaf leaf, View view, Shot shot, Luck luck)
    {
        var (width, height) = (view.WidthPx, view.HeightPx);
        var columns = (width + GridPx - 1) / GridPx + 1;
        var rows = (height + GridPx - 1) / GridPx + 1;
        var nodes = new Node[columns * rows];
        for (var r = 0; r < rows; r++)
            for (var c = 0; c < columns; c++)
                nodes[r * columns + c] = NodeAt(view, shot, leaf, c * GridPx + .5, r * GridPx + .5);
        var table = new TableTone(shot.Table, luck);
        var light = new float[width * height];
        for (var y = 0; y < height; y++)
        {
            var (r, fy) = (y / GridPx, y % GridPx * (1f / GridPx));
            for (var c = 0; c < columns - 1; c++)
            {
                var left = Node.Mix(nodes[r * columns + c], nodes[(r + 1) * columns + c], fy);
                var right = Node.Mix(nodes[r * columns + c + 1], nodes[(r + 1) * columns + c + 1], fy);
                var last = Math.Min(GridPx, width - c * GridPx);
                for (var i = 0; i < last; i++)
                {
                    var here = Node.Mix(left, right, i * (1f / GridPx));
                    light[y * width + c * GridPx + i] = ToneAt(leaf, here.X, here.Y, table) * here.Kept + here.Added;
                }
            }
        }
        return light;
    }

    private static Node NodeAt(View view, Shot shot, Leaf leaf, double x, double y)
    {
        var place = view.MmOf(x, y);
        var kept = shot.ExposureFraction;
        var added = 255 * shot.HazeFraction;
        if (shot.FallFraction > 0)
        {
            var (sin, cos) = Math.SinCos(shot.FallRad);
            var along = ((x / view.WidthPx - .5) * cos + (y / view.HeightPx - .5) * sin) / (Math.Abs(cos) + Math.Abs(sin)) + .5;
            kept *= 1 - shot.FallFraction * along;
        }
        foreach (var shade in shot.Shades)
        {
            var share = shade.At(place.XMm, place.YMm);
            kept *= 1 - shade.TakenFraction * share;
            added += 255 * shade.AddedFraction * share;
        }
        return new((float)(place.XMm * leaf.PxPerMm - .5), (float)(place.YMm * leaf.PxPerMm - .5), (float)(kept * (1 - shot.HazeFraction)), (float)added);
    }

    // Between four pixels of the sheet; beside it the table.
    private static float ToneAt(Leaf leaf, float x, float y, TableTone table)
    {
        var (x0, y0) = ((int)x, (int)y);
        if (x < 0 || y < 0 || x0 >= leaf.WidthPx - 1 || y0 >= leaf.HeightPx - 1) return table.At(x / (float)leaf.PxPerMm, y / (float)leaf.PxPerMm);
        var (fx, fy) = (x - x0, y - y0);
        var i = y0 * leaf.WidthPx + x0;
        var v = leaf.Values;
        float top = v[i] + (v[i + 1] - v[i]) * fx, below = v[i + leaf.WidthPx] + (v[i + leaf.WidthPx + 1] - v[i + leaf.WidthPx]) * fx;
        return top + (below - top) * fy;
    }

    private static byte[] Sensor(float[] light, Shot shot, Luck luck)
    {
        var values = new byte[light.Length];
        var bits = luck.Bits() | 1;
        var cut = shot.CutFraction is { } fraction ? (float)(fraction * 235 * shot.ExposureFraction) : 0;
        for (var i = 0; i < light.Length; i++)
        {
            // Four bytes of a xorshift summed: normal enough for noise, and quick. Its sd is 147.8.
            bits ^= bits << 13;
            bits ^= bits >> 7;
            bits ^= bits << 17;
            var sum = (int)(bits & 255) + (int)(bits >> 8 & 255) + (int)(bits >> 16 & 255) + (int)(bits >> 24 & 255) - 510;
            var value = light[i] + (float)shot.NoiseSd * sum * (1 / 147.8f);
            if (cut > 0) value = value > cut ? 255 : 0;
            values[i] = (byte)Math.Clamp(value + .5f, 0, 255);
        }
        return values;
    }

    private static GreyImage Jpeg(byte[] values, int width, int height, int quality)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        for (var y = 0; y < height; y++) values.AsSpan(y * width, width).CopyTo(bitmap.GetPixelSpan().Slice(y * bitmap.RowBytes, width));
        using var file = bitmap.Encode(SKEncodedImageFormat.Jpeg, quality);
        using var back = SKBitmap.Decode(file, new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        var read = new byte[width * height];
        for (var y = 0; y < height; y++) back.GetPixelSpan().Slice(y * back.RowBytes, width).CopyTo(read.AsSpan(y * width));
        return new(width, height, read);
    }

    private readonly record struct Node(float X, float Y, float Kept, float Added)
    {
        public static Node Mix(Node a, Node b, float t) => new(a.X + (b.X - a.X) * t, a.Y + (b.Y - a.Y) * t, a.Kept + (b.Kept - a.Kept) * t, a.Added + (b.Added - a.Added) * t);
    }
}
