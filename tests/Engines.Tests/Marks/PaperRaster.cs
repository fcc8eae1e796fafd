using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>A printed and filled form as a raster of darkness, 0 for paper to 1 for black, at a fixed number of pixels a millimetre.</summary>
internal sealed class PaperRaster
{
    private const double OutlineMm = .3;

    public PaperRaster(double widthMm, double heightMm, int pxPerMm = 12)
    {
        (WidthMm, HeightMm, PxPerMm) = (widthMm, heightMm, pxPerMm);
        (Width, Height) = ((int)Math.Round(widthMm * pxPerMm), (int)Math.Round(heightMm * pxPerMm));
        Dark = new byte[Width * Height];
    }

    public double WidthMm { get; }

    public double HeightMm { get; }

    public int PxPerMm { get; }

    public int Width { get; }

    public int Height { get; }

    public byte[] Dark { get; }

    /// <summary>All that is printed: anchors, a code of random modules, outlines, and a mark like a number above each field.</summary>
    public static PaperRaster Printed(SheetLayout layout, int pxPerMm = 12)
    {
        var paper = new PaperRaster(layout.WidthMm, layout.HeightMm, pxPerMm);
        foreach (var a in layout.Anchors)
        {
            paper.Square(a.XMm, a.YMm, a.SizeMm, 1);
            if (a.IsHollow) paper.Square(a.XMm, a.YMm, a.SizeMm / 2, 0);
        }
        paper.Code(layout.Code);
        foreach (var f in layout.Fields)
        {
            paper.Outline(f);
            var (x, y) = (f.XMm + f.WidthMm / 2, f.YMm - 1.4);
            paper.Stroke([(x - .6, y - .8), (x + .6, y - .8), (x - .2, y + .9)], .25, .95);
        }
        foreach (var w in layout.Writings)
            paper.Stroke([(w.XMm, w.YMm), (w.XMm + w.WidthMm, w.YMm), (w.XMm + w.WidthMm, w.YMm + w.HeightMm), (w.XMm, w.YMm + w.HeightMm), (w.XMm, w.YMm)], .25, .8);
        return paper;
    }

    public void Square(double xMm, double yMm, double sizeMm, double dark) =>
        Paint(xMm - sizeMm / 2, yMm - sizeMm / 2, xMm + sizeMm / 2, yMm + sizeMm / 2,
            (x, y) => sizeMm / 2 - Math.Max(Math.Abs(x - xMm), Math.Abs(y - yMm)), dark, isOver: true);

    /// <summary>A line through places, round at its ends.</summary>
    public void Stroke(IReadOnlyList<(double X, double Y)> places, double widthMm, double dark)
    {
        for (var i = 1; i < places.Count; i++)
        {
            var (a, b) = (places[i - 1], places[i]);
            Paint(Math.Min(a.X, b.X) - widthMm, Math.Min(a.Y, b.Y) - widthMm, Math.Max(a.X, b.X) + widthMm, Math.Max(a.Y, b.Y) + widthMm,
                (x, y) => widthMm / 2 - ToLine(x, y, a, b), dark, isOver: false);
        }
    }

    /// <summary>A pale cloud, as of what was rubbed out.</summary>
    public void Smear(double xMm, double yMm, double radiusMm, double dark)
    {
        for (var y = Pixel(yMm - 2 * radiusMm); y < Pixel(yMm + 2 * radiusMm); y++)
        {
            for (var x = Pixel(xMm - 2 * radiusMm); x < Pixel(xMm + 2 * radiusMm); x++)
            {
                if (x < 0 || y < 0 || x >= Width || y >= Height) continue;
                var far = double.Hypot((x + .5) / PxPerMm - xMm, (y + .5) / PxPerMm - yMm) / radiusMm;
                var value = (byte)(255 * dark * Math.Exp(-far * far));
                Dark[y * Width + x] = Math.Max(Dark[y * Width + x], value);
            }
        }
    }

    private void Outline(MarkField f)
    {
        var (x0, y0, a, b) = (f.XMm + f.WidthMm / 2, f.YMm + f.HeightMm / 2, f.WidthMm / 2, f.HeightMm / 2);
        if (f.IsRound)
            Paint(f.XMm - 1, f.YMm - 1, f.XMm + f.WidthMm + 1, f.YMm + f.HeightMm + 1,
                (x, y) => OutlineMm / 2 - Math.Abs(double.Hypot((x - x0) / a, (y - y0) / b) - 1) * Math.Min(a, b), 1, isOver: false);
        else
            Paint(f.XMm - 1, f.YMm - 1, f.XMm + f.WidthMm + 1, f.YMm + f.HeightMm + 1,
                (x, y) => OutlineMm / 2 - Math.Abs(Math.Max(Math.Abs(x - x0) - a, Math.Abs(y - y0) - b)), 1, isOver: false);
    }

    private void Code(CodePlace code)
    {
        const int modules = 29;
        var (sizeMm, random) = (code.SizeMm / modules, new Random(7));
        for (var y = 0; y < modules; y++)
        {
            for (var x = 0; x < modules; x++)
            {
                var (fx, fy) = (x < 8 ? x : x - (modules - 7), y < 8 ? y : y - (modules - 7));
                var isFinder = (x < 8 && y < 8) || (x >= modules - 8 && y < 8) || (x < 8 && y >= modules - 8);
                var ring = Math.Max(Math.Abs(fx - 3), Math.Abs(fy - 3));
                if (isFinder ? ring is 3 or 0 or 1 : random.Next(2) == 0)
                    Square(code.XMm + (x + .5) * sizeMm, code.YMm + (y + .5) * sizeMm, sizeMm, 1);
            }
        }
    }

    private void Paint(double leftMm, double topMm, double rightMm, double bottomMm, Func<double, double, double> insideMm, double dark, bool isOver)
    {
        for (var y = Math.Max(0, Pixel(topMm) - 1); y <= Math.Min(Height - 1, Pixel(bottomMm) + 1); y++)
        {
            for (var x = Math.Max(0, Pixel(leftMm) - 1); x <= Math.Min(Width - 1, Pixel(rightMm) + 1); x++)
            {
                var cover = Math.Clamp(insideMm((x + .5) / PxPerMm, (y + .5) / PxPerMm) * PxPerMm + .5, 0, 1);
                if (cover <= 0) continue;
                ref var at = ref Dark[y * Width + x];
                at = isOver ? (byte)Math.Round(at + cover * (255 * dark - at)) : (byte)Math.Max(at, 255 * dark * cover);
            }
        }
    }

    private int Pixel(double mm) => (int)Math.Floor(mm * PxPerMm);

    private static double ToLine(double x, double y, (double X, double Y) a, (double X, double Y) b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = dx * dx + dy * dy;
        var t = length == 0 ? 0 : Math.Clamp(((x - a.X) * dx + (y - a.Y) * dy) / length, 0, 1);
        return double.Hypot(x - a.X - t * dx, y - a.Y - t * dy);
    }
}
