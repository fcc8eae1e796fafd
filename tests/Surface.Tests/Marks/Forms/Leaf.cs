namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>A sheet of paper as a raster of the light it gives back: 0 black, 255 white.</summary>
internal sealed class Leaf
{
    private const double GrainMm = .13;

    public Leaf(double widthMm, double heightMm, double pxPerMm, byte tone)
    {
        (WidthMm, HeightMm, PxPerMm) = (widthMm, heightMm, pxPerMm);
        (WidthPx, HeightPx) = ((int)Math.Ceiling(widthMm * pxPerMm), (int)Math.Ceiling(heightMm * pxPerMm));
        Values = new byte[WidthPx * HeightPx];
        Array.Fill(Values, tone);
    }

    private Leaf(Leaf other)
    {
        (WidthMm, HeightMm, PxPerMm, WidthPx, HeightPx) = (other.WidthMm, other.HeightMm, other.PxPerMm, other.WidthPx, other.HeightPx);
        Values = (byte[])other.Values.Clone();
    }

    public double WidthMm { get; }

    public double HeightMm { get; }

    public double PxPerMm { get; }

    public int WidthPx { get; }

    public int HeightPx { get; }

    public byte[] Values { get; }

    public Leaf Copy() => new(this);

    public void Fill(double xMm, double yMm, double widthMm, double heightMm, Ink ink) => Draw(
        [new Stroke([new(xMm, yMm + heightMm / 2), new(xMm + widthMm, yMm + heightMm / 2)], heightMm)], ink, 0, squareEnds: true);

    /// <summary>Draws strokes of one ink; where they cross it is no darker.</summary>
    public void Draw(IReadOnlyList<Stroke> strokes, Ink ink, ulong grainSeed, bool squareEnds = false)
    {
        var margin = strokes.Max(s => Math.Max(s.StartWidthMm, s.EndWidthMm)) / 2 + ink.SoftMm + 1 / PxPerMm;
        var left = PxOf(strokes.Min(s => s.Points.Min(p => p.XMm)) - margin, WidthPx);
        var top = PxOf(strokes.Min(s => s.Points.Min(p => p.YMm)) - margin, HeightPx);
        var right = PxOf(strokes.Max(s => s.Points.Max(p => p.XMm)) + margin, WidthPx - 1) + 1;
        var bottom = PxOf(strokes.Max(s => s.Points.Max(p => p.YMm)) + margin, HeightPx - 1) + 1;
        if (right <= left || bottom <= top) return;
        var cover = new float[(right - left) * (bottom - top)];
        foreach (var stroke in strokes)
            for (var i = 0; i + 1 < stroke.Points.Count; i++)
            {
                var (from, to) = ((double)i / (stroke.Points.Count - 1), (double)(i + 1) / (stroke.Points.Count - 1));
                var (fromMm, toMm) = (WidthAt(stroke, from) / 2, WidthAt(stroke, to) / 2);
                Cover(cover, left, top, right, bottom, stroke.Points[i], stroke.Points[i + 1], fromMm, toMm, ink.SoftMm, squareEnds);
            }
        for (int y = top, i = 0; y < bottom; y++)
            for (var x = left; x < right; x++, i++)
            {
                if (cover[i] == 0) continue;
                var taken = cover[i] * ink.DarkFraction;
                if (ink.GrainFraction > 0) taken *= 1 - ink.GrainFraction * GrainAt((x + .5) / PxPerMm, (y + .5) / PxPerMm, grainSeed);
                ref var value = ref Values[y * WidthPx + x];
                value = (byte)(value * (1 - taken) + .5);
            }
    }

    private static double WidthAt(Stroke stroke, double fraction) => stroke.StartWidthMm + (stroke.EndWidthMm - stroke.StartWidthMm) * fraction;

    private int PxOf(double mm, int last) => Math.Clamp((int)Math.Floor(mm * PxPerMm), 0, last);

    // How much of each pixel a tapering stroke from a to b covers, by the distance of its middle from the line.
    private void Cover(
        float[] cover, int left, int top, int right, int bottom, Point a, Point b, double radiusAMm, double radiusBMm, double softMm, bool squareEnds)
    {
        var reach = Math.Max(radiusAMm, radiusBMm) + softMm + 1 / PxPerMm;
        var (x0, x1) = (Math.Max(left, (int)((Math.Min(a.XMm, b.XMm) - reach) * PxPerMm)), Math.Min(right, (int)((Math.Max(a.XMm, b.XMm) + reach) * PxPerMm) + 1));
        var (y0, y1) = (Math.Max(top, (int)((Math.Min(a.YMm, b.YMm) - reach) * PxPerMm)), Math.Min(bottom, (int)((Math.Max(a.YMm, b.YMm) + reach) * PxPerMm) + 1));
        var (along, lengthMm) = (b - a, (b - a).LengthMm);
        var slope = 1 / Math.Max(softMm, 1 / PxPerMm);
        for (var y = y0; y < y1; y++)
            for (var x = x0; x < x1; x++)
            {
                var (px, py) = ((x + .5) / PxPerMm - a.XMm, (y + .5) / PxPerMm - a.YMm);
                var t = lengthMm > 0 ? (px * along.XMm + py * along.YMm) / (lengthMm * lengthMm) : 0;
                var clamped = Math.Clamp(t, 0, 1);
                var (dx, dy) = (px - clamped * along.XMm, py - clamped * along.YMm);
                var inside = radiusAMm + (radiusBMm - radiusAMm) * clamped - Math.Sqrt(dx * dx + dy * dy);
                if (squareEnds) inside = Math.Min(inside, Math.Min(t, 1 - t) * lengthMm);
                if (squareEnds && t is < 0 or > 1) inside = Math.Min(inside, -Math.Max(-t, t - 1) * lengthMm);
                var share = (float)Math.Clamp(inside * slope + .5, 0, 1);
                ref var here = ref cover[(y - top) * (right - left) + x - left];
                if (share > here) here = share;
            }
    }

    // By place on paper, not by pixel: the same grain at any resolution.
    private static double GrainAt(double xMm, double yMm, ulong seed)
    {
        var cell = Luck.Mixed(seed ^ ((ulong)(int)(xMm / GrainMm) << 32) ^ (ulong)(int)(yMm / GrainMm));
        return (cell >> 40) * (1.0 / (1 << 24));
    }
}
