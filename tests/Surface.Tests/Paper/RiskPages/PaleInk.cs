using Slantwise.Engines.Drawing;

namespace Slantwise.Surface.Tests.Paper.RiskPages;

/// <summary>Finds what is too pale on a page: each text against every fill that is really under it, each line against what lies beside it.</summary>
internal static class PaleInk
{
    private const double BesideMm = 0.3;
    private const int Samples = 12;

    /// <summary>A sentence for each text and line whose contrast is too low, or that a later fill covers.</summary>
    public static IReadOnlyList<string> Of(Scene page, bool isGrey = false)
    {
        var found = new List<string>();
        string Hex(Tone tone) => isGrey ? Contrast.Grey(PrintColours.HexOf(tone)) : PrintColours.HexOf(tone);
        for (var i = 0; i < page.Shapes.Count; i++)
        {
            var shape = page.Shapes[i];
            var (least, points, named) = shape switch
            {
                Text text => (Contrast.TextRatio, Inside(text), $"'{text.Content}'"),
                Line line => (Contrast.LineRatio, Beside(line), $"{line}"),
                Box { StrokeMm: > 0 } box => (Contrast.LineRatio, Around(box), $"{box}"),
                Box => (0, [], ""),
                // A kind this does not know would otherwise pass unseen.
                _ => throw new NotSupportedException($"This check does not know a {shape.GetType().Name}."),
            };
            foreach (var (x, y) in points)
            {
                var under = Under(page, i, x, y);
                var ratio = Contrast.Ratio(Hex(shape.Tone), Hex(under));
                if (ratio < least) found.Add($"{named} in {shape.Tone} on {under}: {ratio:0.00}, not {least}.");
                if (shape is Text && page.Shapes.Skip(i + 1).OfType<Box>().Any(b => b.StrokeMm == 0 && Covers(b, x, y))) found.Add($"{named} is covered.");
            }
        }
        return [.. found.Distinct()];
    }

    // The last fill drawn before it, or the paper.
    private static Tone Under(Scene page, int before, double x, double y) =>
        page.Shapes.Take(before).OfType<Box>().LastOrDefault(b => b.StrokeMm == 0 && Covers(b, x, y))?.Tone ?? Tone.Ground;

    private static bool Covers(Box box, double x, double y) => x >= box.XMm && x <= box.XMm + box.WidthMm && y >= box.YMm && y <= box.YMm + box.HeightMm;

    private static IEnumerable<(double X, double Y)> Inside(Text text)
    {
        var (left, top, right, bottom) = text.InkRoom();
        foreach (var x in Steps(left, right))
            foreach (var y in Steps(top, bottom)) yield return (x, y);
    }

    private static IEnumerable<(double X, double Y)> Beside(Line line)
    {
        var (dx, dy) = (line.X2Mm - line.X1Mm, line.Y2Mm - line.Y1Mm);
        var length = Math.Sqrt(dx * dx + dy * dy);
        foreach (var share in Steps(0, 1))
            foreach (var side in (double[])[-1, 1])
                yield return (line.X1Mm + share * dx + side * BesideMm * dy / length, line.Y1Mm + share * dy - side * BesideMm * dx / length);
    }

    private static IEnumerable<(double X, double Y)> Around(Box box)
    {
        foreach (var x in Steps(box.XMm, box.XMm + box.WidthMm)) yield return (x, box.YMm - BesideMm);
        foreach (var x in Steps(box.XMm, box.XMm + box.WidthMm)) yield return (x, box.YMm + box.HeightMm + BesideMm);
        foreach (var y in Steps(box.YMm, box.YMm + box.HeightMm)) yield return (box.XMm - BesideMm, y);
        foreach (var y in Steps(box.YMm, box.YMm + box.HeightMm)) yield return (box.XMm + box.WidthMm + BesideMm, y);
    }

    private static IEnumerable<double> Steps(double from, double to) => Enumerable.Range(0, Samples + 1).Select(i => from + (to - from) * i / Samples);
}
