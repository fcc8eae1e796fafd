namespace Slantwise.Engines.Marks;

/// <summary>A field and what is around it, straightened: six pixels a millimetre, its middle in the middle.</summary>
internal sealed class FieldPatch
{
    public const int PxPerMm = 6;

    private FieldPatch(int width, int height) => (Width, Height, Values) = (width, height, new float[width * height]);

    public int Width { get; }

    public int Height { get; }

    /// <summary>Row by row.</summary>
    public float[] Values { get; }

    /// <summary>The greys of a field and so many millimetres on each side.</summary>
    public static FieldPatch Of(PictureLevel level, PageMap map, MarkField field, double marginMm)
    {
        var (width, height) = (Side(field.WidthMm + 2 * marginMm), Side(field.HeightMm + 2 * marginMm));
        var patch = new FieldPatch(width, height);
        Fill(level, map, field, patch, 1);
        return patch;
    }

    /// <summary>Its pixel at a place from the field's middle; may lie outside.</summary>
    public (double X, double Y) Pixel(double xMm, double yMm) => (xMm * PxPerMm + (Width - 1) / 2.0, yMm * PxPerMm + (Height - 1) / 2.0);

    /// <summary>Greys of another picture at the same places, taken at every so many pixels and in proportion between.</summary>
    public FieldPatch Like(PictureLevel level, PageMap map, MarkField field, int every)
    {
        var patch = new FieldPatch(Width, Height);
        Fill(level, map, field, patch, every);
        return patch;
    }

    public static int Side(double lengthMm) => (int)Math.Ceiling(lengthMm * PxPerMm) | 1;

    // A field is so small that its corners say where all between lies.
    private static void Fill(PictureLevel level, PageMap map, MarkField field, FieldPatch patch, int every)
    {
        var (xMm, yMm) = (field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
        var (halfXMm, halfYMm) = ((patch.Width - 1) / 2.0 / PxPerMm, (patch.Height - 1) / 2.0 / PxPerMm);
        var (a, b) = (map.At(xMm - halfXMm, yMm - halfYMm), map.At(xMm + halfXMm, yMm - halfYMm));
        var (c, d) = (map.At(xMm - halfXMm, yMm + halfYMm), map.At(xMm + halfXMm, yMm + halfYMm));
        for (var y = 0; y < patch.Height; y += every)
        {
            var down = y / (patch.Height - 1.0);
            var (x0, y0) = (a.XPx + down * (c.XPx - a.XPx), a.YPx + down * (c.YPx - a.YPx));
            var (x1, y1) = (b.XPx + down * (d.XPx - b.XPx), b.YPx + down * (d.YPx - b.YPx));
            FillRow(level, patch.Values.AsSpan(y * patch.Width, patch.Width), x0, y0, x1, y1, every);
            for (var again = y + 1; again < Math.Min(y + every, patch.Height); again++)
                patch.Values.AsSpan(y * patch.Width, patch.Width).CopyTo(patch.Values.AsSpan(again * patch.Width));
        }
    }

    private static void FillRow(PictureLevel level, Span<float> row, double x0, double y0, double x1, double y1, int every)
    {
        var (stepX, stepY) = ((x1 - x0) / (row.Length - 1) * level.Scale, (y1 - y0) / (row.Length - 1) * level.Scale);
        var (x, y) = (x0 * level.Scale - .5, y0 * level.Scale - .5);
        for (var i = 0; i < row.Length; i += every)
        {
            var grey = PictureLevel.Between(level.Image, x + i * stepX, y + i * stepY);
            row[i..Math.Min(i + every, row.Length)].Fill(grey);
        }
    }
}
