using Slantwise.Engines.Marks;
using ZXing;
using ZXing.Common;
using ZXing.Multi.QrCode.Internal;
using ZXing.QrCode.Internal;

namespace Slantwise.Paper.Reading;

/// <summary>Looks for QR codes in a picture: all of them, turned anyhow, with the middles of their three finder patterns.</summary>
/// <remarks>
/// A code of 20 mm has 0.8 mm a module, so that 3 pixels a millimetre are just enough; a small picture is tried first, which is quick and less noisy,
/// and a larger one only where that shows nothing that can be read.
/// </remarks>
internal static class CodeFinder
{
    private static readonly Dictionary<DecodeHintType, object> Hints = new() { [DecodeHintType.TRY_HARDER] = true };

    // From 297 mm a page: 4, 7 and 11 pixels a millimetre.
    private static readonly int[] SidesPx = [1250, 2200, 3400];

    // A form of A4 is as large as so many codes of 20 mm.
    private const double CodesOfAForm = 210.0 * 297 / (20 * 20);

    // What is left of a picture covered so far is too little for another form as large.
    private const double FullFraction = 0.55;

    /// <summary>The codes of a picture.</summary>
    /// <param name="image">The picture.</param>
    /// <param name="isOver">Asked between tries: whether the time is up.</param>
    /// <returns>Those that can be read; where none can, those that were seen. Empty where there is none.</returns>
    public static IReadOnlyList<SeenCode> Find(GreyImage image, Func<bool> isOver)
    {
        IReadOnlyList<SeenCode> seen = [];
        var read = new List<SeenCode>();
        var tried = 0;
        foreach (var sidePx in SidesPx)
        {
            var times = Math.Max(1, (int)Math.Round(Math.Max(image.WidthPx, image.HeightPx) / (double)sidePx));
            if (times == tried) continue;
            tried = times;
            var smaller = GreyPixels.Shrunk(image, times);
            foreach (var (isLocal, isAslant) in new[] { (true, false), (false, false), (true, true) })
            {
                if (isOver()) return read.Count > 0 ? read : seen;
                var found = isAslant ? Aslant(smaller, times) : Find(smaller, times, isLocal);
                read.AddRange(found.Where(c => c.Text is not null && !read.Exists(r => AreNear(r.Sighting, c.Sighting))));
                if (CoveredFraction(read, image) >= FullFraction) return read;
                // Beside what was read there is room for another form: it is looked for once in each larger picture.
                if (read.Count > 0) break;
                if (seen.Count == 0) seen = found;
            }
        }
        return read.Count > 0 ? read : seen;
    }

    // How much of the picture the forms of these codes cover.
    private static double CoveredFraction(List<SeenCode> read, GreyImage image) => read.Sum(c =>
    {
        var sidePx = Distance(c.Sighting.TopLeft, c.Sighting.TopRight) / c.Sighting.FinderFraction;
        return sidePx * sidePx * CodesOfAForm;
    }) / ((double)image.WidthPx * image.HeightPx);

    // A code that stands on its corner is looked for along its diagonals, where its patterns are at their least plain: turned by an eighth they stand straight.
    private static List<SeenCode> Aslant(GreyImage image, int times)
    {
        var (w, h) = (image.WidthPx, image.HeightPx);
        var side = (int)((w + h) * Math.Sqrt(0.5));
        var values = new byte[side * side];
        var half = Math.Sqrt(0.5);
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var from = Back(new PixelPoint(x + 0.5, y + 0.5));
                var (left, top) = ((int)Math.Floor(from.XPx), (int)Math.Floor(from.YPx));
                values[y * side + x] = left >= 0 && top >= 0 && left < w && top < h ? image.Values[top * w + left] : (byte)255;
            }
        }
        return [.. Find(new GreyImage(side, side, values), 1, isLocal: true).Select(c => c with { Sighting = Turned(c.Sighting) })];

        PixelPoint Back(PixelPoint p)
        {
            var (x, y) = (p.XPx - side / 2.0, p.YPx - side / 2.0);
            return new PixelPoint((x + y) * half + w / 2.0, (y - x) * half + h / 2.0);
        }

        CodeSighting Turned(CodeSighting code) => code with { TopLeft = Scaled(code.TopLeft), TopRight = Scaled(code.TopRight), BottomLeft = Scaled(code.BottomLeft) };

        PixelPoint Scaled(PixelPoint p)
        {
            var back = Back(p);
            return new PixelPoint(back.XPx * times, back.YPx * times);
        }
    }

    private static List<SeenCode> Find(GreyImage image, int times, bool isLocal)
    {
        var light = new RGBLuminanceSource(image.Values, image.WidthPx, image.HeightPx, RGBLuminanceSource.BitmapFormat.Gray8);
        Binarizer binarizer = isLocal ? new HybridBinarizer(light) : new GlobalHistogramBinarizer(light);
        var found = new List<SeenCode>();
        if (new BinaryBitmap(binarizer).BlackMatrix is not { } bits) return found;
        foreach (var place in new MultiDetector(bits).detectMulti(Hints) ?? [])
        {
            if (place is not { Points.Length: >= 3, Bits.Width: > 7 }) continue;
            var text = new Decoder().decode(place.Bits, Hints)?.Text;
            var code = new SeenCode(text, SightingOf(place, times));
            // Three patterns of one code are found in several ways; one that was read stands for them all.
            var same = found.FindIndex(c => AreNear(c.Sighting, code.Sighting));
            if (same < 0) found.Add(code);
            else if (found[same].Text is null) found[same] = code;
        }
        return found;
    }

    private static CodeSighting SightingOf(DetectorResult place, int times) => new(
        At(place.Points[1], times), At(place.Points[2], times), At(place.Points[0], times),
        // A pattern's middle lies three and a half modules from the edge.
        (place.Bits.Width - 7) / (double)place.Bits.Width);

    private static PixelPoint At(ResultPoint point, int times) => new(point.X * (double)times, point.Y * (double)times);

    private static bool AreNear(CodeSighting a, CodeSighting b)
    {
        var side = Math.Max(Distance(a.TopLeft, a.TopRight), Distance(b.TopLeft, b.TopRight));
        return Distance(Middle(a), Middle(b)) < side;
    }

    private static PixelPoint Middle(CodeSighting code) => new((code.TopRight.XPx + code.BottomLeft.XPx) / 2, (code.TopRight.YPx + code.BottomLeft.YPx) / 2);

    private static double Distance(PixelPoint a, PixelPoint b) => Math.Sqrt((a.XPx - b.XPx) * (a.XPx - b.XPx) + (a.YPx - b.YPx) * (a.YPx - b.YPx));
}
