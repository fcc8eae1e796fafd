using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Paper.Reading;

/// <summary>A page in grey, to cut pieces from.</summary>
internal sealed class GreyPicture(GreyImage image, long tag) : PagePicture
{
    // A box of 5 mm with its surroundings is about 80 pixels wide then: enough to see a pencil's stroke, and small to keep.
    private const double PxPerMm = 8;
    private const int PhotoQuality = 75;
    private const int MaxSidePx = 2400;

    public override long Tag => tag;

    public override byte[] Photo() => Encoded(image.Values, image.WidthPx, image.HeightPx, SKEncodedImageFormat.Jpeg, PhotoQuality);

    public override byte[] Crop(PageMap map, FormArea area)
    {
        var (values, width, height) = Cut(map, area, PxPerMm);
        return Encoded(values, width, height, SKEncodedImageFormat.Png, 100);
    }

    public override double InkFraction(PageMap map, FormArea area)
    {
        var (values, width, height) = Cut(map, area, 4);
        var sorted = values.Order().ToArray();
        // Most of a box is paper, even of one that is written in: its brighter quarter says how bright paper is here.
        var paper = sorted[sorted.Length * 3 / 4];
        var dark = values.Select(v => v < paper * 0.75).ToArray();
        // What is dark along a third of a row is a line to write on, and what it runs into above and below: no hand fills a row like that.
        var isLine = Enumerable.Range(0, height).Select(y => dark.AsSpan(y * width, width).Count(true) > width * 0.3).ToArray();
        var count = 0;
        for (var y = 0; y < height; y++)
        {
            if (isLine[y] || (y > 0 && isLine[y - 1]) || (y + 1 < height && isLine[y + 1])) continue;
            count += dark.AsSpan(y * width, width).Count(true);
        }
        return count / (double)values.Length;
    }

    private (byte[] Values, int Width, int Height) Cut(PageMap map, FormArea area, double pxPerMm)
    {
        var scale = Math.Min(pxPerMm, MaxSidePx / Math.Max(1, Math.Max(area.WidthMm, area.HeightMm)));
        var (width, height) = (Math.Max(1, (int)(area.WidthMm * scale)), Math.Max(1, (int)(area.HeightMm * scale)));
        var values = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                values[y * width + x] = At(map.At(area.XMm + (x + 0.5) / scale, area.YMm + (y + 0.5) / scale));
        }
        return (values, width, height);
    }

    private byte At(PixelPoint point)
    {
        var (x, y) = (point.XPx - 0.5, point.YPx - 0.5);
        if (!(x >= 0 && y >= 0 && x <= image.WidthPx - 1 && y <= image.HeightPx - 1)) return 255;
        var (left, top) = ((int)x, (int)y);
        var (right, bottom) = (Math.Min(left + 1, image.WidthPx - 1), Math.Min(top + 1, image.HeightPx - 1));
        var (dx, dy) = (x - left, y - top);
        var upper = Value(left, top) * (1 - dx) + Value(right, top) * dx;
        var lower = Value(left, bottom) * (1 - dx) + Value(right, bottom) * dx;
        return (byte)(upper * (1 - dy) + lower * dy + 0.5);
    }

    private byte Value(int x, int y) => image.Values[y * image.WidthPx + x];

    private static byte[] Encoded(byte[] values, int width, int height, SKEncodedImageFormat format, int quality)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        for (var y = 0; y < height; y++) values.AsSpan(y * width, width).CopyTo(bitmap.GetPixelSpan().Slice(y * bitmap.RowBytes, width));
        using var data = bitmap.Encode(format, quality);
        return data.ToArray();
    }
}
