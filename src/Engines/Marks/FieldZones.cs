namespace Slantwise.Engines.Marks;

/// <summary>Which pixels of a field's patch lie inside its outline, which just outside, and in which direction.</summary>
internal sealed class FieldZones
{
    public const double MarginMm = 2.6;

    /// <summary>Directions in which what lies outside is told apart.</summary>
    public const int SectorCount = 16;

    private const double FromMm = .5;
    private const double UpToMm = 2.3;

    private FieldZones(int[] inside, bool[] isInside, (int, int)[] around) => (Inside, IsInside, Around) = (inside, isInside, around);

    /// <summary>Pixels inside, the outline and what blur makes of it left out.</summary>
    public int[] Inside { get; }

    /// <summary>The same, by pixel.</summary>
    public bool[] IsInside { get; }

    /// <summary>Pixels outside, and the direction of each.</summary>
    public (int Pixel, int Sector)[] Around { get; }

    /// <summary>Those of a size and a shape.</summary>
    /// <param name="field">The field, for its size and shape.</param>
    /// <param name="outlineMm">How far inside the middle of the outline its black still reaches.</param>
    public static FieldZones Of(MarkField field, double outlineMm)
    {
        var (width, height) = (FieldPatch.Side(field.WidthMm + 2 * MarginMm), FieldPatch.Side(field.HeightMm + 2 * MarginMm));
        var (inside, isInside, around) = (new List<int>(), new bool[width * height], new List<(int, int)>());
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (xMm, yMm) = ((x - (width - 1) / 2.0) / FieldPatch.PxPerMm, (y - (height - 1) / 2.0) / FieldPatch.PxPerMm);
                var outMm = OutMm(field, xMm, yMm);
                var pixel = y * width + x;
                if (outMm < -outlineMm) inside.Add(pixel);
                isInside[pixel] = outMm < -outlineMm;
                if (outMm is > FromMm and < UpToMm)
                    around.Add((pixel, (int)((Math.Atan2(yMm, xMm) + Math.PI) / (2 * Math.PI) * SectorCount) % SectorCount));
            }
        }
        return new([.. inside], isInside, [.. around]);
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
