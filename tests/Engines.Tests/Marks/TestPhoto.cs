using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>Photographs a raster from a known place: every pixel of the picture is asked where on the paper it looks.</summary>
internal sealed record TestPhoto(int WidthPx, int HeightPx)
{
    /// <summary>Where the form's corners lie in the picture, clockwise from the top left.</summary>
    public required PixelPoint[] Corners { get; init; }

    public double WidthMm { get; init; } = 210;

    public double HeightMm { get; init; } = 297;

    /// <summary>How far a place of the paper was moved by its bend before it was seen, in millimetres.</summary>
    public Func<double, double, (double Dx, double Dy)>? Bend { get; init; }

    /// <summary>How much light falls at a part of the picture, 0 to 1.</summary>
    public Func<double, double, double> Light { get; init; } = (_, _) => .9;

    public int BlurReachPx { get; init; }

    public double NoiseGrey { get; init; }

    /// <summary>What lies beside the paper.</summary>
    public double DeskGrey { get; init; } = 70;

    /// <summary>A picture of the paper alone, a millimetre of it so many pixels, turned about its middle.</summary>
    public static TestPhoto Of(double pxPerMm, double turnDeg = 0, double widthMm = 210, double heightMm = 297, double slant = 0)
    {
        var (sine, cosine) = Math.SinCos(turnDeg * Math.PI / 180);
        var corners = new PixelPoint[4];
        for (var i = 0; i < 4; i++)
        {
            var (right, below) = (i is 1 or 2 ? 1 : -1, i >= 2 ? 1 : -1);
            // A slant makes what is above smaller, as if the paper were tilted away.
            var nearer = 1 / (1 - slant * below);
            var (x, y) = (right * widthMm / 2 * pxPerMm * nearer, below * heightMm / 2 * pxPerMm * nearer);
            corners[i] = new(cosine * x - sine * y, sine * x + cosine * y);
        }
        var (left, top) = (corners.Min(c => c.XPx) - 20, corners.Min(c => c.YPx) - 20);
        return new((int)(corners.Max(c => c.XPx) - left + 20), (int)(corners.Max(c => c.YPx) - top + 20))
        {
            Corners = [.. corners.Select(c => new PixelPoint(c.XPx - left, c.YPx - top))], WidthMm = widthMm, HeightMm = heightMm,
        };
    }

    /// <summary>Where a place of the form is seen.</summary>
    public PixelPoint TrueAt(double xMm, double yMm)
    {
        var flat = Flat();
        // What is seen at (u, v) of a flat page is the place (u, v) + bend(u, v): turned round by a fixed point.
        var (u, v) = (xMm, yMm);
        for (var i = 0; i < 50; i++)
        {
            var (dx, dy) = Bend?.Invoke(u, v) ?? (0, 0);
            (u, v) = (xMm - dx, yMm - dy);
        }
        var (x, y) = flat.At(u, v);
        return new(x, y);
    }

    public CodeSighting Code(CodePlace code, double offPx = .4)
    {
        var (edge, far) = (code.SizeMm * 3.5 / 29, code.SizeMm * 25.5 / 29);
        PixelPoint Off(PixelPoint p, double dx, double dy) => new(p.XPx + dx * offPx, p.YPx + dy * offPx);
        return new(Off(TrueAt(code.XMm + edge, code.YMm + edge), 1, -.6), Off(TrueAt(code.XMm + far, code.YMm + edge), -.7, .8),
            Off(TrueAt(code.XMm + edge, code.YMm + far), .4, 1), 22.0 / 29);
    }

    public GreyImage Taken(PaperRaster paper, int seed = 1) => Noisy(Blurred(Seen([(paper, this)])), seed);

    public GreyImage Taken(IReadOnlyList<(PaperRaster Paper, TestPhoto Place)> papers, int seed = 1) => Noisy(Blurred(Seen(papers)), seed);

    private float[] Seen(IReadOnlyList<(PaperRaster Paper, TestPhoto Place)> papers)
    {
        var values = new float[WidthPx * HeightPx];
        var backs = papers.Select(p => p.Place.Flat().Back()).ToArray();
        Parallel.For(0, HeightPx, y =>
        {
            for (var x = 0; x < WidthPx; x++)
            {
                var (sum, light) = (0.0, Light((x + .5) / WidthPx, (y + .5) / HeightPx));
                for (var k = 0; k < 4; k++)
                {
                    var dark = -1.0;
                    for (var i = 0; i < papers.Count && dark < 0; i++)
                    {
                        var at = backs[i].At(x + .25 + .5 * (k % 2), y + .25 + .5 * (k / 2));
                        var (dx, dy) = papers[i].Place.Bend?.Invoke(at.X, at.Y) ?? (0, 0);
                        dark = DarkAt(papers[i].Paper, at.X + dx, at.Y + dy);
                    }
                    sum += dark < 0 ? DeskGrey : 250 * (1 - .88 * dark) * light;
                }
                values[y * WidthPx + x] = (float)(sum / 4);
            }
        });
        return values;
    }

    private QuadMap Flat() => QuadMap.Of(WidthMm, HeightMm, Corners);

    private static double DarkAt(PaperRaster paper, double xMm, double yMm)
    {
        var (x, y) = (xMm * paper.PxPerMm - .5, yMm * paper.PxPerMm - .5);
        if (!(x >= 0 && y >= 0 && x < paper.Width - 1 && y < paper.Height - 1)) return -1;
        var (left, top) = ((int)x, (int)y);
        var (dx, dy, at) = (x - left, y - top, top * paper.Width + left);
        var dark = paper.Dark;
        var above = dark[at] + dx * (dark[at + 1] - dark[at]);
        var below = dark[at + paper.Width] + dx * (dark[at + paper.Width + 1] - dark[at + paper.Width]);
        return (above + dy * (below - above)) / 255;
    }

    private float[] Blurred(float[] values)
    {
        // Two passes of a plain mean in each direction.
        for (var pass = 0; pass < 2 && BlurReachPx > 0; pass++) values = Mean(Mean(values, 1), WidthPx);
        return values;
    }

    private float[] Mean(float[] values, int stride)
    {
        var to = new float[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            var (sum, count) = (0f, 0);
            for (var k = -BlurReachPx; k <= BlurReachPx; k++)
            {
                var at = i + k * stride;
                if (at < 0 || at >= values.Length) continue;
                (sum, count) = (sum + values[at], count + 1);
            }
            to[i] = sum / count;
        }
        return to;
    }

    private GreyImage Noisy(float[] values, int seed)
    {
        var (random, bytes) = (new Random(seed), new byte[values.Length]);
        for (var i = 0; i < bytes.Length; i++)
        {
            // Four even numbers together are normal enough.
            var noise = NoiseGrey == 0 ? 0 : (random.NextDouble() + random.NextDouble() + random.NextDouble() + random.NextDouble() - 2) * 1.73 * NoiseGrey;
            bytes[i] = (byte)Math.Clamp(Math.Round(values[i] + noise), 0, 255);
        }
        return new(WidthPx, HeightPx, bytes);
    }
}
