using SkiaSharp;
using Slantwise.Engines.Marks;

namespace Slantwise.Paper.Reading;

/// <summary>Pictures in grey: from colours, turned upright, and smaller.</summary>
internal static class GreyPixels
{
    /// <summary>Colours as grey, turned as the camera noted.</summary>
    /// <param name="pixels">Red, green, blue, opacity; row by row. What can be seen through is seen on white.</param>
    /// <param name="widthPx">The width before turning.</param>
    /// <param name="heightPx">The height before turning.</param>
    /// <param name="origin">Which corner of the page the first pixel is.</param>
    /// <remarks>Brightness as JPEG itself weighs colours, in 256ths. Source: [T871] section 7.</remarks>
    public static GreyImage Of(ReadOnlySpan<byte> pixels, int widthPx, int heightPx, SKEncodedOrigin origin)
    {
        var values = new byte[widthPx * heightPx];
        var isSideways = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (start, stepX, stepY) = Walk(origin, widthPx, heightPx);
        for (var y = 0; y < heightPx; y++)
        {
            var row = pixels.Slice(y * widthPx * 4, widthPx * 4);
            var to = start + y * stepY;
            for (var x = 0; x < row.Length; x += 4, to += stepX)
            {
                var grey = 77 * row[x] + 150 * row[x + 1] + 29 * row[x + 2];
                var opacity = row[x + 3];
                values[to] = opacity == 255 ? (byte)(grey >> 8) : (byte)(((grey >> 8) * opacity + 255 * (255 - opacity)) / 255);
            }
        }
        return isSideways ? new GreyImage(heightPx, widthPx, values) : new GreyImage(widthPx, heightPx, values);
    }

    /// <summary>Half the size, again and again, while the longer side stays at or above what is wanted.</summary>
    public static GreyImage Halved(GreyImage image, int sidePx)
    {
        while (Math.Max(image.WidthPx, image.HeightPx) / 2 >= sidePx) image = Shrunk(image, 2);
        return image;
    }

    /// <summary>A whole number of times smaller: each pixel the mean of a square.</summary>
    public static GreyImage Shrunk(GreyImage image, int times)
    {
        if (times <= 1) return image;
        var (width, height) = (Math.Max(1, image.WidthPx / times), Math.Max(1, image.HeightPx / times));
        var values = new byte[width * height];
        var sums = new int[width];
        // A side shorter than the square has but one pixel to give.
        var (across, down) = (Math.Min(times, image.WidthPx), Math.Min(times, image.HeightPx));
        for (var y = 0; y < height; y++)
        {
            Array.Clear(sums);
            for (var j = 0; j < down; j++)
            {
                var row = image.Values.AsSpan((y * times + j) * image.WidthPx, image.WidthPx);
                for (var x = 0; x < width; x++)
                {
                    var sum = 0;
                    for (var i = 0; i < across; i++) sum += row[x * times + i];
                    sums[x] += sum;
                }
            }
            for (var x = 0; x < width; x++) values[y * width + x] = (byte)(sums[x] / (across * down));
        }
        return new GreyImage(width, height, values);
    }

    /// <summary>A quarter turn to the right, once or several times.</summary>
    public static GreyImage Turned(GreyImage image, int quarters)
    {
        var (w, h) = (image.WidthPx, image.HeightPx);
        var origin = (((quarters % 4) + 4) % 4) switch { 1 => SKEncodedOrigin.RightTop, 2 => SKEncodedOrigin.BottomRight, 3 => SKEncodedOrigin.LeftBottom, _ => SKEncodedOrigin.TopLeft };
        if (origin == SKEncodedOrigin.TopLeft) return image;
        var values = new byte[w * h];
        var (start, stepX, stepY) = Walk(origin, w, h);
        for (var y = 0; y < h; y++)
        {
            var to = start + y * stepY;
            for (var x = 0; x < w; x++, to += stepX) values[to] = image.Values[y * w + x];
        }
        return origin == SKEncodedOrigin.BottomRight ? new GreyImage(w, h, values) : new GreyImage(h, w, values);
    }

    // Where the first pixel goes, and how far the next in its row and the next row are from it. The names say where the first row and the first column are.
    private static (int Start, int StepX, int StepY) Walk(SKEncodedOrigin origin, int w, int h) => origin switch
    {
        SKEncodedOrigin.TopRight => (w - 1, -1, w),
        SKEncodedOrigin.BottomRight => (w * h - 1, -1, -w),
        SKEncodedOrigin.BottomLeft => (w * (h - 1), 1, -w),
        SKEncodedOrigin.LeftTop => (0, h, 1),
        SKEncodedOrigin.RightTop => (h - 1, h, -1),
        SKEncodedOrigin.RightBottom => (w * h - 1, -h, -1),
        SKEncodedOrigin.LeftBottom => (h * (w - 1), -h, 1),
        _ => (0, 1, w),
    };
}
