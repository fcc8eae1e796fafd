namespace Slantwise.Engines.Marks;

/// <summary>Which pixels of a field's patch lie inside its outline, which just outside, and in which direction.</summary>
internal sealed class FieldZones
{
    public const double MarginMm = 2.6;

    /// <summary>Directions in which what lies outside is told apart.</summary>
    public const int SectorCount = 16;

    /// <summary>Steps of distance from the outline, a pixel each.</summary>
    public const int BinCount = 42;

    private const double UpToMm = 2.3;
    private const double FirstBinMm = -4.5;

    private FieldZones(int[] inside, bool[] isInside, (int, int)[] line, (int, int)[] around, (int, int)[] bins) =>
        (Inside, IsInside, Line, Around, Bins) = (inside, isInside, line, around, bins);

    /// <summary>Pixels inside, the outline and what blur makes of it left out.</summary>
    public int[] Inside { get; }

    /// <summary>The same, by pixel.</summary>
    public bool[] IsInside { get; }

    /// <summary>Pixels between the two, on the outline, and the direction of each.</summary>
    public (int Pixel, int Sector)[] Line { get; }

    /// <summary>Pixels outside, and the direction of each.</summary>
    public (int Pixel, int Sector)[] Around { get; }

    /// <summary>The pixels of both, sorted by their distance from the outline, and the step of each.</summary>
    public (int Pixel, int Bin)[] Bins { get; }

    /// <summary>How far outside the outline a step lies, less than 0 inside.</summary>
    public static double OutMm(int bin) => FirstBinMm + (bin + .5) / FieldPatch.PxPerMm;

    /// <summary>Those of a size and a shape.</summary>
    /// <param name="field">The field, for its size and shape.</param>
    /// <param name="outlineMm">How far from the middle of the outline to each side its black is not to be told from a mark.</param>
    public static FieldZones Of(MarkField field, double outlineMm)
    {
        var (width, height) = (FieldPatch.Side(field.WidthMm + 2 * MarginMm), FieldPatch.Side(field.HeightMm + 2 * MarginMm));
        var (inside, isInside, around) = (new List<int>(), new bool[width * height], new List<(int, int)>());
        var (line, bins) = (new List<(int, int)>(), new List<(int Pixel, int Bin)>());
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (xMm, yMm) = ((x - (width - 1) / 2.0) / FieldPatch.PxPerMm, (y - (height - 1) / 2.0) / FieldPatch.PxPerMm);
                var outMm = OutMm(field, xMm, yMm);
                var pixel = y * width + x;
                if (outMm < -outlineMm) inside.Add(pixel);
                isInside[pixel] = outMm < -outlineMm;
                var isAround = outMm > outlineMm && outMm < UpToMm;
                if (isAround || isInside[pixel]) bins.Add((pixel, Math.Clamp((int)((outMm - FirstBinMm) * FieldPatch.PxPerMm), 0, BinCount - 1)));
                if (outMm >= UpToMm || isInside[pixel]) continue;
                var sector = (int)((Math.Atan2(yMm, xMm) + Math.PI) / (2 * Math.PI) * SectorCount) % SectorCount;
                (isAround ? around : line).Add((pixel, sector));
            }
        }
        return new([.. inside], isInside, [.. line], [.. around], [.. bins.OrderBy(b => b.Bin)]);
    }

    // How far a place is outside of the outline, less than 0 inside; for an ellipse to the first order, which is exact on it and for circles nearly so.
    private static double OutMm(MarkField field, double xMm, double yMm)
    {
        var (a, b) = (field.WidthMm / 2, field.HeightMm / 2);
        if (!field.IsRound) return Math.Max(Math.Abs(xMm) - a, Math.Abs(yMm) - b);
        var (x, y) = (xMm / a, yMm / b);
        var f = double.Hypot(x, y);
        var slope = double.Hypot(x / a, y / b);
        return slope < 1e-9 ? -Math.Min(a, b) : (f - 1) * f / slope;
    }
}
