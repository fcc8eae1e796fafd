using Slantwise.Engines.Marks;

namespace Slantwise.Paper.Reading;

/// <summary>Whether a picture shows the fields of a form where its map says they are: the black squares of all forms are alike, their fields are not.</summary>
internal static class OutlineFit
{
    private const int PointCount = 24;

    // Away from the outline by this much there is paper on one side or the other, unless the field itself is marked.
    private const double BesideMm = 1.0;

    /// <summary>Whether nearly every field's outline is there.</summary>
    public static bool Of(GreyImage image, SheetLayout layout, PageMap map)
    {
        if (layout.Fields.Count == 0) return false;
        var seenCount = layout.Fields.Count(field => IsSeen(image, field, map));
        return seenCount >= 0.9 * layout.Fields.Count;
    }

    private static bool IsSeen(GreyImage image, MarkField field, PageMap map)
    {
        var darkerCount = 0;
        for (var i = 0; i < PointCount; i++)
        {
            var (x, y, outX, outY) = PointOf(field, i / (double)PointCount);
            // The map may be off by a fraction of a millimetre: the darkest place across the outline counts.
            var on = 255;
            for (var step = -2; step <= 2; step++) on = Math.Min(on, At(image, map.At(x + outX * step * 0.15, y + outY * step * 0.15)));
            var beside = Math.Max(At(image, map.At(x + outX * BesideMm, y + outY * BesideMm)), At(image, map.At(x - outX * BesideMm, y - outY * BesideMm)));
            if (on < beside * 0.88) darkerCount++;
        }
        return darkerCount >= PointCount * 0.75;
    }

    private static (double X, double Y, double OutX, double OutY) PointOf(MarkField field, double turnFraction)
    {
        var (halfW, halfH) = (field.WidthMm / 2, field.HeightMm / 2);
        var (midX, midY) = (field.XMm + halfW, field.YMm + halfH);
        if (field.IsRound)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * turnFraction);
            return (midX + halfW * cos, midY + halfH * sin, cos, sin);
        }
        var (side, along) = ((int)(turnFraction * 4), turnFraction * 4 % 1 * 2 - 1);
        return side switch
        {
            0 => (midX + halfW * along, midY - halfH, 0, -1),
            1 => (midX + halfW, midY + halfH * along, 1, 0),
            2 => (midX + halfW * along, midY + halfH, 0, 1),
            _ => (midX - halfW, midY + halfH * along, -1, 0),
        };
    }

    private static int At(GreyImage image, PixelPoint point)
    {
        var (x, y) = ((int)Math.Floor(point.XPx), (int)Math.Floor(point.YPx));
        return x >= 0 && y >= 0 && x < image.WidthPx && y < image.HeightPx ? image.Values[y * image.WidthPx + x] : 255;
    }
}
